// Checks what a studio exported, with nothing but Node 20 or newer: node verify.mjs [line and hash, as the last page of a
// sealed PDF prints the head of the record]. Beside it lie events.json and the folder papers/ with the PDF files.
import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, realpathSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const sha256 = (...parts) => parts.reduce((hash, part) => hash.update(part), createHash('sha256')).digest('hex')

/** The one text of a value: JSON Canonicalization Scheme, RFC 8785. Keys go by UTF-16 code units, as JavaScript sorts. */
export function canonical(value) {
	if (typeof value === 'string' && !value.isWellFormed()) throw new Error('half of a pair of surrogates')
	if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${value} is no number of JSON`)
	if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`
	if (value === null || typeof value !== 'object') return JSON.stringify(value)
	const pairs = Object.keys(value)
		.sort()
		.map((key) => `${canonical(key)}:${canonical(value[key])}`)
	return `{${pairs.join(',')}}`
}

/** A line of the record: SHA-256 of a zero byte and its canonical text (a leaf, as in RFC 9162, section 2.1). */
export const lineHash = (entry) => sha256(new Uint8Array([0]), canonical({ v: 1, ...entry }))

/** What is wrong with the chain: each line bears its number, its own hash and the hash of the one before; 64 noughts first. */
export function faultsOfChain(lines, head) {
	let prev = '0'.repeat(64)
	for (const [index, { entry, hash }] of lines.entries()) {
		if (entry.seq !== index + 1) return [`line ${index + 1} is missing or out of place`]
		if (lineHash(entry) !== hash) return [`line ${entry.seq} was altered`]
		if (entry.prev !== prev) return [`line ${entry.seq} does not follow the one before`]
		prev = hash
	}
	if (head === undefined) return []
	const there = lines[head.seq - 1]
	if (there === undefined) return [`line ${head.seq}, the head that the PDF names, is gone: the tail was cut off`]
	return there.hash === head.hash
		? []
		: [`line ${head.seq} is another one than when the PDF was made: the record was rewritten`]
}

/** Which PDF files are not those whose SHA-256 the line of their keeping holds, and which are gone without their client's erasure. */
export function faultsOfPapers(lines, files) {
	const entries = lines.map(({ entry }) => entry)
	const erased = new Set(entries.filter(({ act }) => act === 'client erased').map(({ client }) => client))
	const told = entries.filter(({ act }) => act === 'agreement paper kept')
	const known = new Set(told.map(({ facts }) => facts.sha256))
	const found = new Map(files.map(({ name, bytes }) => [sha256(bytes), name]))
	const strange = [...found].filter(([hash]) => !known.has(hash)).map(([, name]) => `${name} is not as it was sealed`)
	const gone = told.filter(({ client, facts }) => !found.has(facts.sha256) && !erased.has(client))
	return [...strange, ...gone.map(({ seq, facts }) => `the PDF of line ${seq}, ${facts.sha256}, is not there`)]
}

function main(folder, [seq, ...groups]) {
	const lines = JSON.parse(readFileSync(join(folder, 'events.json'), 'utf8'))
	const papers = join(folder, 'papers')
	const names = existsSync(papers) ? readdirSync(papers).sort() : []
	const files = names.map((name) => ({ name, bytes: readFileSync(join(papers, name)) }))
	const head = seq === undefined ? undefined : { seq: Number(seq), hash: groups.join('').toLowerCase() }
	const faults = [...faultsOfChain(lines, head), ...faultsOfPapers(lines, files)]
	for (const fault of faults) process.stdout.write(`Not right: ${fault}.\n`)
	if (faults.length === 0) process.stdout.write(`All is right: ${lines.length} lines, ${files.length} PDF files.\n`)
	if (head === undefined)
		process.stdout.write('Name the head that a sealed PDF prints, to see that the record was not rewritten.\n')
	process.exitCode = faults.length === 0 ? 0 : 1
}

const own = fileURLToPath(import.meta.url)
if (process.argv[1] !== undefined && realpathSync(process.argv[1]) === own) main(dirname(own), process.argv.slice(2))
