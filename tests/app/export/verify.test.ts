import { spawnSync } from 'node:child_process'
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { canonical, faultsOfChain, faultsOfPapers, lineHash } from '@/app/documents/export/verify.mjs'
import { type Json, canonical as ours } from '@/lib/record/canonical'
import { type Entry, entryHash, firstBreak, genesis, type Kept } from '@/lib/record/chain'
import { sha256 } from '@/lib/record/hash'
import { moment } from '@/lib/units/day'

const at = (minute: number) => moment(new Date(Date.UTC(2026, 10, 20, 9, minute)))
type Told = Omit<Entry, 'seq' | 'prev'>

function chained(told: readonly Told[]): Kept[] {
	let prev = genesis
	return told.map((of, n) => {
		const entry = { ...of, seq: n + 1, prev }
		prev = entryHash(entry)
		return { entry, hash: prev }
	})
}

const pdf = (n: number) => Buffer.from(`%PDF-1.3 file ${n}`)
const told = (n: number): Told => ({
	...{ at: at(n), actor: `person ${n}`, act: 'agreement paper kept', object: `agreement ${n}`, client: `client ${n}` },
	...{ facts: { sha256: sha256(pdf(n)), number: n }, sealed: null },
})
const five = chained([1, 2, 3, 4, 5].map(told))
const files = [1, 2, 3, 4, 5].map((n) => ({ name: `${n}.pdf`, bytes: pdf(n) }))
const last = { seq: 5, hash: five.at(-1)?.hash ?? '' }

// RFC 8785, sections 3.2.2 and 3.2.3 (the RFC's own samples) and appendix B; judged by the library `canonicalize` beside.
describe('its canonical text', () => {
	test('sample of section 3.2.2', () => {
		const value: Json = JSON.parse(String.raw`{
			"numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
			"string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/", "literals": [null, true, false]
		}`)
		expect(canonical(value)).toBe(
			String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
		)
	})

	test('keys of section 3.2.3, by their code units', () => {
		const value: Json = JSON.parse(String.raw`{
			"\u20ac": "Euro Sign", "\r": "Carriage Return", "\ufb33": "Hebrew Letter Dalet With Dagesh", "1": "One",
			"\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control", "\u00f6": "Latin Small Letter O With Diaeresis"
		}`)
		const names = ['Carriage Return', 'One', 'Control', 'Latin Small', 'Euro Sign', 'Emoji', 'Hebrew']
		const places = names.map((name) => canonical(value).indexOf(name))
		expect(places).toEqual(places.toSorted((a, b) => a - b))
	})

	test.each([
		{ bits: '8000000000000000', text: '0' },
		{ bits: '7fefffffffffffff', text: '1.7976931348623157e+308' },
		{ bits: '44b52d02c7e14af6', text: '1e+23' },
		{ bits: 'becbf647612f3696', text: '-0.0000033333333333333333' },
	])('the number $bits is $text', ({ bits, text }) => {
		expect(canonical(new DataView(Uint8Array.from(Buffer.from(bits, 'hex')).buffer).getFloat64(0))).toBe(text)
	})

	test.each([Number.NaN, Number.POSITIVE_INFINITY, '\ud800', { a: ['x\udc00'] }])('refuses %j', (value) => {
		expect(() => canonical(value)).toThrow()
	})

	test('is that of the library, whatever the value', () => {
		fc.assert(
			fc.property(fc.jsonValue({ maxDepth: 5 }), (value) => {
				const json: Json = JSON.parse(JSON.stringify(value))
				expect(canonical(json)).toBe(ours(json))
			}),
			{ numRuns: 500 },
		)
	})
})

type Broken = { name: string; lines: readonly Kept[]; says: RegExp }
const line = (n: number): Kept => five[n] ?? { entry: { ...told(n), seq: 0, prev: genesis }, hash: genesis }
const flipped = (n: number, its: Partial<Entry>) => five.with(n, { ...line(n), entry: { ...line(n).entry, ...its } })
const rewritten = (from: number) =>
	chained([1, 2, 3, 4, 5].map((n) => ({ ...told(n), ...(n > from && { actor: 'x' }) })))

describe('the chain', () => {
	test('is whole as it was written, and its lines have the hashes of the record', () => {
		expect(faultsOfChain(five, last)).toEqual([])
		expect(five.map(({ entry }) => lineHash(entry))).toEqual(five.map(({ hash }) => hash))
	})

	test.each<Broken>([
		{ name: 'a letter flipped', lines: flipped(2, { actor: 'person 8' }), says: /^line 3 was altered$/ },
		{ name: 'two swapped', lines: [line(0), line(2), line(1), line(3), line(4)], says: /^line 2 is missing/ },
		{ name: 'one dropped', lines: five.toSpliced(1, 1), says: /^line 2 is missing or out of place$/ },
		{ name: 'one put in', lines: five.toSpliced(2, 0, line(2)), says: /^line 4 is missing or out of place$/ },
		{ name: 'one hashed anew', lines: five.with(1, rewritten(1)[1] ?? line(1)), says: /^line 3 does not follow/ },
		{ name: 'the tail cut off', lines: five.slice(0, 4), says: /^line 5, the head that the PDF names, is gone/ },
		{ name: 'the tail written anew', lines: rewritten(3), says: /^line 5 is another one than when the PDF was made/ },
		{ name: 'all of it written anew', lines: rewritten(0), says: /^line 5 is another one/ },
	])('$name is found', ({ lines, says }) => {
		expect(faultsOfChain(lines, last)).toEqual([expect.stringMatching(says)])
	})

	test('a tail written anew is whole by itself: only the head that a PDF prints tells', () => {
		expect(faultsOfChain(rewritten(3))).toEqual([])
	})

	test('finds a fault exactly where the record itself finds one', () => {
		const change = fc.tuple(fc.nat(4), fc.nat(4), fc.constantFrom('swap', 'drop', 'insert', 'flip', 'none'))
		fc.assert(
			fc.property(change, ([a, b, what]) => {
				const lines = {
					swap: five.with(a, line(b)).with(b, line(a)),
					drop: five.toSpliced(a, 1),
					insert: five.toSpliced(a, 0, line(b)),
					flip: flipped(a, { object: `agreement ${b + 10}` }),
					none: five,
				}[what]
				expect(faultsOfChain(lines).length === 0).toBe(firstBreak(lines) === null)
			}),
			{ numRuns: 300 },
		)
	})
})

describe('the files', () => {
	test('are those of the record', () => {
		expect(faultsOfPapers(five, files)).toEqual([])
	})

	test('one flipped byte is found, and the file that is gone with it', () => {
		const bytes = Buffer.from(pdf(2))
		bytes[5] = (bytes[5] ?? 0) ^ 1
		const faults = faultsOfPapers(five, files.with(1, { name: '2.pdf', bytes }))
		expect(faults).toEqual(['2.pdf is not as it was sealed', expect.stringContaining('the PDF of line 2')])
	})

	test('one that went with its client’s erasure is not missed', () => {
		const erased = chained([...[1, 2, 3].map(told), { ...told(3), act: 'client erased', facts: {} }])
		expect(faultsOfPapers(erased, files.slice(0, 2))).toEqual([])
		expect(faultsOfPapers(erased, files.slice(1, 3))).toEqual([expect.stringContaining('the PDF of line 1')])
	})
})

describe('the program, as it is exported', () => {
	let folder: string
	beforeAll(() => {
		folder = mkdtempSync(join(tmpdir(), 'doorsill-export-'))
		copyFileSync('app/documents/export/verify.mjs', join(folder, 'verify.mjs'))
		mkdirSync(join(folder, 'papers'))
		for (const { name, bytes } of files) writeFileSync(join(folder, 'papers', name), bytes)
	})
	afterAll(() => rmSync(folder, { recursive: true, force: true }))

	const run = (lines: readonly Kept[], ...head: string[]) => {
		writeFileSync(join(folder, 'events.json'), JSON.stringify(lines))
		const { status, stdout } = spawnSync(process.execPath, [join(folder, 'verify.mjs'), ...head], {
			cwd: tmpdir(),
			encoding: 'utf8',
		})
		return { status, stdout }
	}

	test('says that all is right, with the head as the PDF prints it', () => {
		const printed = ['5', ...(last.hash.match(/.{8}/g) ?? [])]
		expect(run(five, ...printed)).toEqual({ status: 0, stdout: 'All is right: 5 lines, 5 PDF files.\n' })
		expect(run(five).stdout).toContain('Name the head that a sealed PDF prints')
	})

	test('says what is not, and ends with 1', () => {
		const { status, stdout } = run(rewritten(3), '5', last.hash.toUpperCase())
		expect(status).toBe(1)
		expect(stdout).toContain('Not right: line 5 is another one than when the PDF was made: the record was rewritten.')
	})
})
