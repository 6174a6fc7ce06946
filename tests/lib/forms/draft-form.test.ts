import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type DraftText, draftForm, draftText, priceBody, saveBody } from '@/lib/forms/draft-form'
import { read } from '@/lib/forms/read'
import { type Draft, draftSchema, emptyDraft } from '@/lib/proposal/draft'
import { day } from '@/lib/units/day'
import { drafts } from '../proposal/arbitrary'
import { anyText } from '../units/arbitrary'

const uuid = (n: number) => `00000000-0000-7000-8000-00000000f${String(n).padStart(3, '0')}`

/** What the editor holds, each field with another value. */
const written: DraftText = {
	v: 1,
	title: 'Winter at the bakery',
	letter: 'Dear Ada,\n\nbirch and copper this year.',
	window: { from: '2026-11-16', to: '2026-11-20' },
	answerBy: '2026-10-30',
	design: 'repeat',
	takeDown: true,
	containers: [{ id: uuid(1), mayLeaveOut: true, isNew: false }],
	options: [
		{
			key: 'a',
			name: 'Copper and plum',
			palette: [{ name: 'Kiln copper', hex: '#b4643a', echoes: 'echoes your pans' }],
			pots: [
				{
					container: uuid(2),
					lines: [{ material: uuid(3), role: 'thriller', holding: 'sold', count: '12.5', grows: null, isKept: false }],
				},
			],
			supplementCents: '75.01',
		},
	],
	extras: [
		{
			key: 'x1',
			name: 'Wreath',
			words: 'for the door',
			place: uuid(4),
			minutes: '17.25',
			lines: [{ material: uuid(5), role: 'accent', holding: 'lent', count: '3', grows: null, isKept: false }],
		},
	],
	agreement: { is: 'fixed', cents: '950', containers: [uuid(6)] },
	overruled: [
		{ option: 'a', container: uuid(7), check: 'height/look again', note: 'The sill is higher than it looks.' },
	],
}

type Tree = { [key: string]: unknown }
const isTree = (value: unknown): value is Tree => value !== null && typeof value === 'object'

/** The same text with one field of it another. */
function having(path: string, value: unknown): unknown {
	const copy: unknown = structuredClone(written)
	const keys = path.split('.')
	let at: unknown = copy
	for (const key of keys.slice(0, -1)) at = isTree(at) ? at[key] : undefined
	if (!isTree(at)) throw new Error(`${path} is not in the draft`)
	at[keys.at(-1) ?? ''] = value
	return copy
}

const errorsOf = (path: string, value: unknown) => {
	const result = read(draftForm, having(path, value))
	return result.ok ? {} : result.errors
}

const line = 'options.0.pots.0.lines.0'

describe('what the editor holds', () => {
	test('becomes a draft: counts, amounts and dates in the core’s own types', () => {
		const result = read(draftForm, written)
		expect(result.ok && result.value).toMatchObject({
			title: 'Winter at the bakery',
			window: { from: '2026-11-16', to: '2026-11-20' },
			options: [{ supplementCents: 7501, pots: [{ lines: [{ count: { way: 'typed', value: 12.5 } }] }] }],
			extras: [{ minutes: 17.25, lines: [{ count: { way: 'typed', value: 3 } }] }],
			agreement: { is: 'fixed', cents: 95_000, containers: [uuid(6)] },
		})
	})

	test('may lack dates', () => {
		const open = read(draftForm, { ...written, window: { from: '', to: '' }, answerBy: '' })
		expect(open.ok && [open.value.window, open.value.answerBy]).toEqual([{ from: null, to: null }, null])
	})

	test('may be as empty as a draft begins', () => {
		const empty = emptyDraft({ from: day('2026-11-16'), to: null, answerBy: null })
		expect(draftForm.parse(draftText(empty))).toEqual(empty)
		expect(draftSchema.parse(empty)).toEqual(empty)
	})
})

describe('amounts, counts and dates that are refused, each where it stands', () => {
	const number = 'Give a number such as 12 or 2.5.'
	const amount = 'Give an amount such as 12.50, to the cent.'
	const date = 'Choose a day of the calendar.'

	test.each([
		{ path: `${line}.count`, value: '-1', says: number },
		{ path: `${line}.count`, value: '1e9', says: number },
		{ path: `${line}.count`, value: '2.0001', says: number },
		{ path: `${line}.count`, value: 'Infinity', says: number },
		{ path: `${line}.count`, value: '1234567', says: number },
		{ path: `${line}.count`, value: '', says: number },
		{ path: `${line}.count`, value: '١٢', says: number },
		{ path: `${line}.count`, value: '10000', says: 'Give a number from 0 to 9999.' },
		{ path: 'extras.0.lines.0.count', value: '-0', says: number },
		{ path: 'extras.0.minutes', value: '600.001', says: 'Give a number from 0 to 600.' },
		{ path: 'extras.0.minutes', value: '1e1', says: number },
		{ path: 'options.0.supplementCents', value: '-5', says: amount },
		{ path: 'options.0.supplementCents', value: '12.505', says: amount },
		{ path: 'options.0.supplementCents', value: '1e3', says: amount },
		{ path: 'options.0.supplementCents', value: '', says: amount },
		{ path: 'options.0.supplementCents', value: '100000.01', says: 'Give an amount of at most 100000.00.' },
		{ path: 'agreement.cents', value: '9999999.99', says: 'Give an amount of at most 100000.00.' },
		{ path: 'agreement.cents', value: 'x', says: amount },
		{ path: 'agreement', value: { is: 'discount', percent: '100.5' }, says: 'Give a number from 0 to 100.' },
		{ path: 'window.from', value: '2026-02-30', says: date },
		{ path: 'window.to', value: 'soon', says: date },
		{ path: 'answerBy', value: '30.10.2026', says: date },
		{ path: 'options.0.palette.0.hex', value: 'copper', says: 'Give a colour such as #5f7488.' },
		{ path: 'options.0.key', value: 'a b', says: 'Open the proposal again.' },
		{ path: 'options.0.key', value: 'abcdefghijklm', says: 'Open the proposal again.' },
		{ path: 'extras.0.place', value: 'here', says: 'This names nothing that is known here.' },
		{ path: `${line}.material`, value: '../etc', says: 'This names nothing that is known here.' },
	])('$path “$value”', ({ path, value, says }) => {
		expect(Object.values(errorsOf(path, value))).toEqual([says])
		expect(Object.keys(errorsOf(path, value))[0]).toContain(path)
	})

	test.each([
		{ path: `${line}.count`, value: 12 },
		{ path: 'options.0.supplementCents', value: 7501 },
		{ path: 'takeDown', value: 'on' },
		{ path: 'containers.0.mayLeaveOut', value: 1 },
		{ path: 'design', value: 'old' },
		{ path: 'agreement', value: { is: 'free' } },
		{ path: 'v', value: 2 },
		{ path: `${line}.role`, value: 'hero' },
		{ path: `${line}.holding`, value: 'hired' },
		{ path: 'options', value: null },
	])('$path as $value', ({ path, value }) => {
		expect(Object.keys(errorsOf(path, value)).some((at) => at.startsWith(path))).toBe(true)
	})
})

describe('nothing rides along', () => {
	test.each([
		{ path: 'totalCents', at: 'form' },
		{ path: 'client', at: 'form' },
		{ path: 'options.0.totalCents', at: 'options.0' },
		{ path: 'options.0.prices', at: 'options.0' },
		{ path: `${line}.priceCents`, at: line },
		{ path: 'extras.0.cents', at: 'extras.0' },
		{ path: 'containers.0.place', at: 'containers.0' },
		{ path: 'agreement.percent', at: 'agreement' },
	])('$path is refused', ({ path, at }) => {
		expect(errorsOf(path, 1)).toEqual({ [at]: expect.stringContaining('Unrecognized key') })
	})

	test('nor beside the draft', () => {
		expect(read(saveBody, { version: 3, draft: written }).ok).toBe(true)
		expect(read(priceBody, { draft: written }).ok).toBe(true)
		expect(read(saveBody, { version: 3, draft: written, state: 'approved' }).ok).toBe(false)
		expect(read(priceBody, { draft: written, version: 3 }).ok).toBe(false)
		for (const version of [0, -1, 1.5, '3', null]) expect(read(saveBody, { version, draft: written }).ok).toBe(false)
	})
})

const texts = [
	{ path: 'title', max: 120 },
	{ path: 'letter', max: 4000 },
	{ path: 'options.0.name', max: 60 },
	{ path: 'options.0.palette.0.name', max: 40 },
	{ path: 'options.0.palette.0.echoes', max: 60 },
	{ path: 'extras.0.name', max: 80 },
	{ path: 'extras.0.words', max: 300 },
]

describe.each(texts)('the words of $path', ({ path, max }) => {
	const stored = 'This holds characters that cannot be stored. Type it again in plain text.'
	const tooLong = `Keep this to ${max} characters.`

	test.each([
		{ name: 'a letter too long', value: 'a'.repeat(max + 1), says: tooLong },
		{ name: 'a book', value: 'b'.repeat(50_000), says: tooLong },
		{ name: 'too long once composed', value: '\u0958'.repeat(max), says: tooLong },
		{ name: 'half a pair at the end', value: 'urn \ud83c', says: stored },
		{ name: 'half a pair in front', value: '\udf32 urn', says: stored },
		{ name: 'a NUL', value: 'urn\u0000s', says: stored },
		{ name: 'an escape', value: '\u001b[31murn', says: stored },
		{ name: 'an override', value: 'urn\u202egnp.exe', says: stored },
		{ name: 'an isolate', value: '\u2066urn\u2069', says: stored },
		{ name: 'no text', value: 7, says: 'Write this in words.' },
	])('refuse $name', ({ value, says }) => {
		expect(errorsOf(path, value)).toEqual({ [path]: says })
	})

	test('may be as long as there is room for, and hold what a browser would read as something else', () => {
		for (const value of ['c'.repeat(max), '</script><b>', '=1+1', "'; --"]) expect(errorsOf(path, value)).toEqual({})
	})

	test('have line ends in a letter alone', () => {
		const says = path === 'letter' ? {} : { [path]: 'Keep this on one line.' }
		expect(errorsOf(path, 'one\r\ntwo')).toEqual(says)
	})
})

describe('one key for two things', () => {
	test.each([
		{ name: 'palettes', path: 'options', value: [written.options[0], { ...written.options[0], name: 'Brass' }] },
		{ name: 'extras', path: 'extras', value: [written.extras[0], { ...written.extras[0], name: 'Garland' }] },
	])('is refused of $name: a client who picks one would be given another, or both', ({ path, value }) => {
		expect(errorsOf(path, value)).toEqual({ [path]: 'Open the proposal again.' })
	})
})

describe('too many of anything', () => {
	const many =
		(count: number) =>
		<T>(of: T) =>
			Array.from({ length: count }, () => of)
	test.each([
		{ path: 'options', value: many(5)(written.options[0]), says: 'Four palettes are the most.' },
		{ path: 'extras', value: many(21)(written.extras[0]), says: 'Twenty extras are the most.' },
		{
			path: 'options.0.palette',
			value: many(9)(written.options[0]?.palette[0]),
			says: 'Eight colours are the most.',
		},
		{ path: 'extras.0.lines', value: many(61)(written.extras[0]?.lines[0]), says: 'Sixty lines are the most.' },
	])('$says', ({ path, value, says }) => {
		expect(errorsOf(path, value)).toEqual({ [path]: says })
	})
})

/** A draft’s text with some of it typed anew, as a person or something hostile might. */
const typed = fc.oneof(
	fc.constantFrom(
		'',
		'0',
		'7',
		'12.50',
		'99999',
		'100000',
		'9999999.99',
		'600',
		'9999',
		'9999.999',
		'1e9',
		'-1',
		' 3 ',
	),
	anyText(8),
	anyText(130, 110),
	fc.constantFrom('2026-11-30', '2026-02-30', '#B4643A', 'cafe\u0301', '\u0958'.repeat(50)),
)
const paths = fc.constantFrom(
	...texts.map(({ path }) => path),
	...[`${line}.count`, 'extras.0.minutes', 'options.0.supplementCents', 'agreement.cents', 'options.0.palette.0.hex'],
	...['window.from', 'window.to', 'answerBy'],
)

describe('laws of the draft’s text', () => {
	test('a draft told as text is read back as it was', () => {
		fc.assert(
			fc.property(drafts, (draft) => {
				const text: unknown = JSON.parse(JSON.stringify(draftText(draft)))
				expect(draftForm.parse(text)).toEqual(draft)
			}),
			{ numRuns: 300 },
		)
	})

	test('a draft can be kept and read again: the record’s own schema takes it unchanged', () => {
		fc.assert(
			fc.property(drafts, (draft) => {
				expect(draftSchema.parse(JSON.parse(JSON.stringify(draft)))).toEqual(draft)
			}),
			{ numRuns: 200 },
		)
	})

	test('whatever the form takes can be kept and read again', () => {
		const keeps = (draft: Draft) => expect(draftSchema.parse(JSON.parse(JSON.stringify(draft)))).toEqual(draft)
		fc.assert(
			fc.property(paths, typed, (path, value) => {
				const result = draftForm.safeParse(having(path, value))
				if (result.success) keeps(result.data)
			}),
			{ numRuns: 2000 },
		)
	})
})
