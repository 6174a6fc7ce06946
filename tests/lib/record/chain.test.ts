import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Entry, entryHash, firstBreak, genesis, type Kept } from '@/lib/record/chain'
import { type Hash, sha256, hash as toHash } from '@/lib/record/hash'
import { type Moment, moment } from '@/lib/units/day'

const at = (minute: number): Moment => moment(new Date(Date.UTC(2026, 9, 5, 8, minute, 30)))

type Told = Omit<Entry, 'seq' | 'prev'>

/** What was told, each line chained to the one before. */
function chained(told: readonly Told[]): Kept[] {
	let prev: Hash = genesis
	return told.map((of, n) => {
		const entry = { ...of, seq: n + 1, prev }
		prev = entryHash(entry)
		return { entry, hash: prev }
	})
}

const told = (n: number): Told => ({
	at: at(n),
	actor: `person ${n}`,
	act: n % 2 === 0 ? 'proposal published' : 'proposal approved',
	object: `proposal ${n * 7}`,
	client: n % 3 === 0 ? null : `client ${n}`,
	facts: { revision: n, palette: `Palette ${n}`, extras: [`x${n}`] },
	sealed: n % 4 === 0 ? null : sha256(`words ${n}`),
})
const five = chained([1, 2, 3, 4, 5].map(told))

const replaced = (lines: readonly Kept[], at: number, line: Kept) => lines.map((each, n) => (n === at ? line : each))
const without = (lines: readonly Kept[], at: number) => lines.filter((_, n) => n !== at)

function line(of: readonly Kept[], at: number): Kept {
	const found = of[at]
	if (found === undefined) throw new Error(`no line ${at}`)
	return found
}

describe('a line of the record', () => {
	test('is hashed behind a zero byte over its canonical text, as RFC 9162 section 2.1 marks a leaf', () => {
		const { entry, hash } = line(five, 1)
		const text =
			`{"act":"proposal published","actor":"person 2","at":"2026-10-05T08:02:30.000Z","client":"client 2",` +
			`"facts":{"extras":["x2"],"palette":"Palette 2","revision":2},"object":"proposal 14",` +
			`"prev":"${line(five, 0).hash}","sealed":"${sha256('words 2')}","seq":2,"v":1}`
		expect(hash).toBe(sha256(new Uint8Array([0]), text))
		expect(entryHash(entry)).not.toBe(sha256(text))
	})

	test('the first is chained to nothing: sixty-four noughts', () => {
		expect(line(five, 0).entry.prev).toBe('0'.repeat(64))
	})
})

describe('the first break', () => {
	test('there is none in a whole chain, nor in an empty one', () => {
		expect(firstBreak(five)).toBeNull()
		expect(firstBreak([])).toBeNull()
	})

	test.each<{ name: string; lines: readonly Kept[]; seq: number; why: string }>([
		{ name: 'a line dropped in the middle', lines: without(five, 2), seq: 3, why: 'missing' },
		{ name: 'the first line dropped', lines: without(five, 0), seq: 1, why: 'missing' },
		{
			name: 'two lines swapped',
			lines: [line(five, 0), line(five, 2), line(five, 1), line(five, 3), line(five, 4)],
			seq: 2,
			why: 'missing',
		},
		{
			name: 'a line told twice',
			lines: [...five.slice(0, 4), line(five, 3), line(five, 4)],
			seq: 4,
			why: 'out of place',
		},
		{
			name: 'a word altered',
			lines: replaced(five, 3, { ...line(five, 3), entry: { ...line(five, 3).entry, actor: 'person 44' } }),
			seq: 4,
			why: 'altered',
		},
		{
			name: 'a word altered to what no text can hold',
			lines: replaced(five, 2, { ...line(five, 2), entry: { ...line(five, 2).entry, facts: { note: '\ud83c' } } }),
			seq: 3,
			why: 'altered',
		},
		{
			name: 'a kept hash altered',
			lines: replaced(five, 1, { ...line(five, 1), hash: sha256('another') }),
			seq: 2,
			why: 'altered',
		},
		{
			name: 'a line of another chain in its place',
			lines: replaced(five, 2, line(chained([9, 8, 7].map(told)), 2)),
			seq: 3,
			why: 'not chained',
		},
		{
			name: 'two swapped and numbered anew, each with its own hash',
			lines: [1, 2].reduce<readonly Kept[]>((all, n) => {
				const entry = { ...line(five, n === 1 ? 2 : 1).entry, seq: n + 1 }
				return replaced(all, n, { entry, hash: entryHash(entry) })
			}, five),
			seq: 2,
			why: 'not chained',
		},
	])('$name', ({ lines, seq, why }) => {
		expect(firstBreak(lines)).toEqual({ seq, why })
	})

	test('it is the first of several', () => {
		const altered = replaced(five, 1, { ...line(five, 1), hash: sha256('one') })
		expect(firstBreak(without(altered, 3))).toEqual({ seq: 2, why: 'altered' })
		expect(firstBreak(without(replaced(five, 4, { ...line(five, 4), hash: sha256('two') }), 2))).toEqual({
			seq: 3,
			why: 'missing',
		})
	})
})

const words = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 })
const lines: fc.Arbitrary<Told> = fc.record({
	at: fc.integer({ min: 0, max: 5000 }).map(at),
	actor: words,
	act: words,
	object: words,
	client: fc.option(words),
	facts: fc.dictionary(words, fc.oneof(words, fc.integer(), fc.boolean(), fc.constant(null)), { maxKeys: 3 }),
	sealed: fc.option(words.map((text) => sha256(text))),
})
const chains = fc.array(lines, { minLength: 3, maxLength: 9 }).map(chained)
const cut = fc.tuple(chains, fc.nat()).map(([chain, n]) => ({ chain, at: n % chain.length }))
const inner = fc.tuple(chains, fc.nat()).map(([chain, n]) => ({ chain, at: n % (chain.length - 1) }))

/** Another text: one character of it is another. */
const flipped = (text: string, at: number) => {
	const characters = [...text]
	const n = at % characters.length
	return characters.with(n, characters[n] === 'x' ? 'y' : 'x').join('')
}

type Altering = (entry: Entry, n: number) => Entry
const alterings: readonly Altering[] = [
	(entry, n) => ({ ...entry, at: at(5001 + n) }),
	(entry, n) => ({ ...entry, actor: flipped(entry.actor, n) }),
	(entry, n) => ({ ...entry, act: flipped(entry.act, n) }),
	(entry, n) => ({ ...entry, object: flipped(entry.object, n) }),
	(entry, n) => ({ ...entry, client: entry.client === null ? 'x' : flipped(entry.client, n) }),
	(entry) => ({ ...entry, client: entry.client === null ? '' : null }),
	(entry) => ({ ...entry, sealed: entry.sealed === null ? sha256('') : null }),
	(entry, n) => ({ ...entry, prev: sha256(`another ${n}`) }),
	(entry, n) => ({ ...entry, facts: { ...entry.facts, [`another ${n}`]: n } }),
	({ facts, ...entry }) => {
		const [[key, value] = [], ...rest] = Object.entries(facts)
		return { ...entry, facts: key === undefined ? { x: 0 } : { ...Object.fromEntries(rest), [key]: [value ?? null] } }
	},
]

describe('laws of the chain', () => {
	test('what was chained is whole', () => {
		fc.assert(fc.property(chains, (chain) => firstBreak(chain) === null))
	})

	test('any field altered by a character names its line', () => {
		fc.assert(
			fc.property(cut, fc.constantFrom(...alterings), fc.nat(), ({ chain, at: n }, alter, by) => {
				const { entry, hash } = line(chain, n)
				expect(firstBreak(replaced(chain, n, { entry: alter(entry, by), hash }))).toEqual({
					seq: n + 1,
					why: 'altered',
				})
			}),
			{ numRuns: 1000 },
		)
	})

	test('any digit of a kept hash altered names its line', () => {
		fc.assert(
			fc.property(cut, fc.nat(63), ({ chain, at: n }, digit) => {
				const { entry, hash } = line(chain, n)
				const other = toHash(`${hash.slice(0, digit)}${hash[digit] === '0' ? '1' : '0'}${hash.slice(digit + 1)}`)
				expect(firstBreak(replaced(chain, n, { entry, hash: other }))).toEqual({ seq: n + 1, why: 'altered' })
			}),
		)
	})

	test('a line dropped before the last is missed by its number', () => {
		fc.assert(
			fc.property(inner, ({ chain, at: n }) => {
				expect(firstBreak(without(chain, n))).toEqual({ seq: n + 1, why: 'missing' })
			}),
		)
	})

	test('two lines swapped: the one that came too late is missed at its place', () => {
		fc.assert(
			fc.property(chains, fc.nat(), fc.nat(), (chain, a, b) => {
				const [first, second] = [a % chain.length, b % chain.length].toSorted((x, y) => x - y)
				fc.pre(first !== undefined && second !== undefined && first !== second)
				if (first === undefined || second === undefined) return
				const swapped = replaced(replaced(chain, first, line(chain, second)), second, line(chain, first))
				expect(firstBreak(swapped)).toEqual({ seq: first + 1, why: 'missing' })
			}),
		)
	})

	test('a line put in between, well hashed and chained, puts the next out of place', () => {
		fc.assert(
			fc.property(cut, lines, ({ chain, at: n }, of) => {
				const entry = { ...of, seq: n + 1, prev: line(chain, n).entry.prev }
				const put = { entry, hash: entryHash(entry) }
				const longer = [...chain.slice(0, n), put, ...chain.slice(n)]
				expect(firstBreak(longer)).toEqual({ seq: n + 1, why: 'out of place' })
			}),
		)
	})

	test('a line altered and hashed anew breaks at the one after it', () => {
		fc.assert(
			fc.property(inner, ({ chain, at: n }) => {
				const { entry } = line(chain, n)
				const other = { ...entry, object: flipped(entry.object, n) }
				const forged = replaced(chain, n, { entry: other, hash: entryHash(other) })
				expect(firstBreak(forged)).toEqual({ seq: n + 2, why: 'not chained' })
			}),
		)
	})

	test('chained anew from the middle, on something else than what came before, breaks there', () => {
		fc.assert(
			fc.property(cut, ({ chain, at: n }) => {
				let prev = sha256('not what came before')
				const anew = chain.slice(n).map(({ entry }) => {
					const moved = { ...entry, prev }
					prev = entryHash(moved)
					return { entry: moved, hash: prev }
				})
				expect(firstBreak([...chain.slice(0, n), ...anew])).toEqual({ seq: n + 1, why: 'not chained' })
			}),
		)
	})
})

describe('what the chain alone cannot see', () => {
	test('its tail dropped: what is left is whole, and only a head kept elsewhere tells', () => {
		fc.assert(
			fc.property(cut, ({ chain, at: n }) => {
				const shorter = chain.slice(0, n)
				expect(firstBreak(shorter)).toBeNull()
				expect(shorter.at(-1)?.hash).not.toBe(chain.at(-1)?.hash)
			}),
		)
	})

	test('all of it told anew from a line on: whole again, with another head', () => {
		fc.assert(
			fc.property(cut, ({ chain, at: n }) => {
				const told = chain.map(({ entry: { seq: _, prev: __, ...rest } }) => rest)
				const anew = chained(told.map((of, at) => (at < n ? of : { ...of, actor: `${of.actor}.` })))
				expect(firstBreak(anew)).toBeNull()
				expect(anew.slice(0, n)).toEqual(chain.slice(0, n))
				expect(anew.at(-1)?.hash).not.toBe(chain.at(-1)?.hash)
			}),
		)
	})
})
