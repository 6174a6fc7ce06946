import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { z } from 'zod'
import {
	addressField,
	dayField,
	decimalField,
	hexField,
	idField,
	moneyField,
	onceField,
	text,
	tick,
} from '@/lib/forms/fields'
import { anyText } from '../units/arbitrary'

const said = (schema: z.ZodType, value: unknown) => {
	const result = schema.safeParse(value)
	return result.success ? { is: result.data } : { says: result.error.issues[0]?.message }
}
const taken = (schema: z.ZodType, value: unknown) => schema.safeParse(value).success

describe('an amount of money', () => {
	test.each([
		{ typed: '12.50', is: 1250 },
		{ typed: '12.5', is: 1250 },
		{ typed: '12', is: 1200 },
		{ typed: '0', is: 0 },
		{ typed: '0.07', is: 7 },
		{ typed: '007.09', is: 709 },
		{ typed: ' 7 ', is: 700 },
		{ typed: '4.35', is: 435 },
		{ typed: '1.15', is: 115 },
		{ typed: '9999999.99', is: 999_999_999 },
	])('“$typed” is $is cents', ({ typed, is }) => {
		expect(said(moneyField, typed)).toEqual({ is })
	})

	test.each([
		'12.505',
		'1e9',
		'-1',
		'+3',
		'١٢',
		'１２',
		'12,50',
		'1,180.00',
		'$14',
		'15.',
		'.50',
		'12.5 0',
		'0x1f',
		'Infinity',
		'NaN',
		'12345678',
		'1_000',
		'',
		'   ',
		'13.70\n14.80',
		'twelve',
	])('“%s” is refused', (typed) => {
		expect(said(moneyField, typed)).toEqual({ says: 'Give an amount such as 12.50, to the cent.' })
	})

	test.each([1250, null, undefined, ['12.50'], { cents: 1250 }])('%j is no text', (value) => {
		expect(taken(moneyField, value)).toBe(false)
	})

	test('is read digit by digit: what is written to the cent comes back', () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 999_999_999 }), (amount) => {
				const [units, cents] = [Math.floor(amount / 100), String(amount % 100).padStart(2, '0')]
				expect(moneyField.parse(`${units}.${cents}`)).toBe(amount)
			}),
			{ numRuns: 1000 },
		)
	})

	test('takes nothing that is not digits with at most two behind a point', () => {
		const near = fc.string({ unit: fc.constantFrom(...'0123456789.,-+e xE'), maxLength: 9 })
		fc.assert(
			fc.property(near, (typed) => {
				expect(taken(moneyField, typed)).toBe(/^\d{1,7}(\.\d\d?)?$/.test(typed.trim()))
			}),
			{ numRuns: 2000 },
		)
	})
})

describe('a decimal', () => {
	const minutes = decimalField(0, 600)
	test.each([
		{ typed: '12', is: 12 },
		{ typed: '2.5', is: 2.5 },
		{ typed: '0.001', is: 0.001 },
		{ typed: '600', is: 600 },
		{ typed: '600.000', is: 600 },
		{ typed: ' 8.25 ', is: 8.25 },
		{ typed: '0', is: 0 },
	])('“$typed” is $is', ({ typed, is }) => {
		expect(said(minutes, typed)).toEqual({ is })
	})

	test.each([
		'-1',
		'1e2',
		'1.0005',
		'0x10',
		'٣',
		'½',
		'2,5',
		'.5',
		'3.',
		'NaN',
		'Infinity',
		'',
		' ',
		'1 000',
		'1234567',
	])('“%s” is refused', (typed) => {
		expect(said(minutes, typed)).toEqual({ says: 'Give a number such as 12 or 2.5.' })
	})

	test.each([
		{ typed: '600.001', field: minutes, says: 'Give a number from 0 to 600.' },
		{ typed: '999999', field: minutes, says: 'Give a number from 0 to 600.' },
		{ typed: '2.999', field: decimalField(3, 9), says: 'Give a number from 3 to 9.' },
	])('“$typed” is out of bounds', ({ typed, field, says }) => {
		expect(said(field, typed)).toEqual({ says })
	})
})

describe('a day', () => {
	test('as the browser sends it', () => {
		expect(said(dayField, '2028-02-29')).toEqual({ is: '2028-02-29' })
	})

	test.each(['2026-02-30', '20.11.2026', '2026-11-20 ', '2026-11', 'tomorrow', '', '2026-11-20T00:00'])(
		'“%s” is refused',
		(typed) => {
			expect(said(dayField, typed)).toEqual({ says: 'Choose a day of the calendar.' })
		},
	)
})

describe('a colour', () => {
	test.each([
		{ typed: '#5f7488', is: '#5f7488' },
		{ typed: ' #B5653A ', is: '#b5653a' },
	])('“$typed”', ({ typed, is }) => {
		expect(said(hexField, typed)).toEqual({ is })
	})

	test.each(['5f7488', '#5f7', 'teal', '#5f74889', 'url(#5f7488)', ''])('“%s” is refused', (typed) => {
		expect(said(hexField, typed)).toEqual({ says: 'Give a colour such as #5f7488.' })
	})
})

describe('an id', () => {
	const at = '0190e6b2-7c41-7d10-9a55-3f2b6c8d9e06'
	test('of whatever a form is about', () => {
		expect(said(idField<'place'>(), at)).toEqual({ is: at })
		expect(said(onceField, at)).toEqual({ is: at })
	})

	test.each([at.toUpperCase(), '7', '../0190e6b2', '', `${at} `])('“%s” is refused', (typed) => {
		expect(said(idField<'place'>(), typed)).toEqual({ says: 'This names nothing that is known here.' })
	})
})

describe('a tick', () => {
	test.each([
		{ name: 'ticked', value: 'on', is: { is: true } },
		{ name: 'absent', value: undefined, is: { is: false } },
	])('$name', ({ value, is }) => {
		expect(said(tick, value)).toEqual(is)
	})

	test.each(['off', 'true', '', '1', true])('%j is neither', (value) => {
		expect(taken(tick, value)).toBe(false)
	})
})

const at = (local: number, domain: string) => `${'a'.repeat(local)}@${domain}`
const label = (length: number) => 'b'.repeat(length)

describe('an address to mail', () => {
	test('the long ones of these cases are as long as they say', () => {
		const [whole, over] = [59, 60].map((last) => at(64, `${label(60)}.${label(60)}.${label(last)}.example`).length)
		expect([whole, over]).toEqual([254, 255])
	})

	test.each([
		{ typed: 'mara@ninefold.example', is: 'mara@ninefold.example' },
		{ typed: '  Ivo+Doors@Mill.Example\n', is: 'ivo+doors@mill.example' },
		{ typed: "s.o'dell@quay.example", is: "s.o'dell@quay.example" },
		{ typed: 'a_b-c@post.quay.example', is: 'a_b-c@post.quay.example' },
	])('“$typed”', ({ typed, is }) => {
		expect(said(addressField, typed)).toEqual({ is })
	})

	// RFC 5321, section 4.5.3.1: a local part has at most 64 octets, a path 256 with its two brackets. RFC 1035, 2.3.4:
	// a label has at most 63.
	test.each([
		{ name: 'a local part of 64 octets', typed: at(64, 'mill.example'), is: true },
		{ name: 'one of 65', typed: at(65, 'mill.example'), is: false },
		{ name: 'a label of 63', typed: at(3, `${label(63)}.example`), is: true },
		{ name: 'one of 64', typed: at(4, `${label(64)}.example`), is: false },
		{ name: '254 octets in all', typed: at(64, `${label(60)}.${label(60)}.${label(59)}.example`), is: true },
		{ name: '255', typed: at(64, `${label(60)}.${label(60)}.${label(60)}.example`), is: false },
		{ name: 'a thousand', typed: at(64, `${`${label(30)}.`.repeat(31)}example`), is: false },
	])('$name', ({ typed, is }) => {
		expect(taken(addressField, typed)).toBe(is)
	})

	test.each([
		{ name: 'a header behind it', typed: 'mara@quay.example\r\nBcc: all@mill.example' },
		{ name: 'a header before it', typed: 'To: x\nmara@quay.example' },
		{ name: 'a bare carriage return', typed: 'mara@quay.example\rSubject: you won' },
		{ name: 'a coded line end', typed: 'mara%0d%0a@quay.example' },
		{ name: 'two, by a comma', typed: 'mara@quay.example,ivo@mill.example' },
		{ name: 'two, by a semicolon', typed: 'mara@quay.example; ivo@mill.example' },
		{ name: 'two, by a space', typed: 'mara@quay.example ivo@mill.example' },
		{ name: 'two at signs', typed: 'mara@ivo@mill.example' },
		{ name: 'a name and brackets', typed: 'Mara <mara@quay.example>' },
		{ name: 'a comment', typed: 'mara(door)@quay.example' },
		{ name: 'a quoted local part', typed: '"mara ivo"@quay.example' },
		{ name: 'a quoted line end', typed: '"mara\\\nivo"@quay.example' },
		{ name: 'a quote to break out of', typed: 'mara"@quay.example' },
		{ name: 'a literal', typed: 'mara@[127.0.0.1]' },
		{ name: 'no domain', typed: 'mara@' },
		{ name: 'no name', typed: '@quay.example' },
		{ name: 'a domain without a dot', typed: 'mara@localhost' },
		{ name: 'dots in a row', typed: 'mara..ivo@quay.example' },
		{ name: 'a dot in front', typed: '.mara@quay.example' },
		{ name: 'a hyphen in front of the domain', typed: 'mara@-quay.example' },
		{ name: 'a NUL', typed: 'mara\u0000@quay.example' },
		{ name: 'a letter that looks like another', typed: 'mаra@quay.example' },
		{ name: 'a mark that turns the order about', typed: 'mara@quay.\u202eexample' },
		{ name: 'a percent route', typed: 'mara%mill.example@quay.example' },
		{ name: 'nothing', typed: '' },
	])('refuses $name', ({ typed }) => {
		expect(said(addressField, typed)).toEqual({ says: 'Give a mail address such as name@example.com.' })
	})

	test('whatever is taken is one line, one address, and small letters', () => {
		const near = fc.string({ unit: fc.constantFrom(...'ab.@-+"<>,; \r\n%:()\\'), maxLength: 24 })
		const whole = fc.tuple(near, near).map(([a, b]) => `${a}mara@quay.example${b}`)
		fc.assert(
			fc.property(whole, (typed) => {
				const result = addressField.safeParse(typed)
				if (!result.success) return
				expect(result.data).toMatch(/^[a-z0-9.+'_-]+@[a-z0-9.-]+$/)
			}),
			{ numRuns: 2000 },
		)
	})
})

describe('words', () => {
	const name = text(12, { min: 1 })
	const note = text(40, { lines: true })

	test.each([
		{ name: 'are trimmed', schema: name, typed: '  two urns \n', is: 'two urns' },
		{ name: 'are composed', schema: name, typed: 'cafe\u0301', is: 'café' },
		{
			name: 'keep their line ends as line feeds',
			schema: note,
			typed: 'one\r\n\r\ntwo\rthree',
			is: 'one\n\ntwo\nthree',
		},
		{ name: 'may be of any script', schema: name, typed: 'Ελιά 🌲', is: 'Ελιά 🌲' },
		{ name: 'may be empty where nothing is asked for', schema: note, typed: ' \t ', is: '' },
		{ name: 'are counted when they are composed', schema: text(4), typed: 'e\u0301e\u0301e\u0301e\u0301', is: 'éééé' },
		{ name: 'are counted when they are trimmed', schema: text(4), typed: '    wood    ', is: 'wood' },
	])('$name', ({ schema, typed, is }) => {
		expect(said(schema, typed)).toEqual({ is })
	})

	const stored = 'This holds characters that cannot be stored. Type it again in plain text.'
	test.each([
		{ name: 'nothing where something is asked for', typed: '', says: 'This cannot be left empty.' },
		{ name: 'blanks where something is asked for', typed: ' \u00a0\n ', says: 'This cannot be left empty.' },
		{ name: 'a letter more than there is room for', typed: 'a'.repeat(13), says: 'Keep this to 12 characters.' },
		{ name: 'a book', typed: 'b'.repeat(100_000), says: 'Keep this to 12 characters.' },
		{ name: 'two lines', typed: 'one\ntwo', says: 'Keep this on one line.' },
		{ name: 'two lines by a carriage return', typed: 'one\rtwo', says: 'Keep this on one line.' },
		{ name: 'two lines by a line separator', typed: 'one\u2028two', says: 'Keep this on one line.' },
		{ name: 'two paragraphs', typed: 'one\u2029two', says: 'Keep this on one line.' },
		{ name: 'a next line', typed: 'one\u0085two', says: stored },
		{ name: 'half a pair', typed: 'urn \ud83c', says: stored },
		{ name: 'a NUL', typed: 'urn\u0000s', says: stored },
		{ name: 'an override', typed: 'urn\u202esnru', says: stored },
	])('refuses $name', ({ typed, says }) => {
		expect(said(name, typed)).toEqual({ says })
	})

	test.each([7, null, undefined, ['urn'], { toString: 'urn' }])('%j is no text', (value) => {
		expect(said(name, value)).toEqual({ says: 'Write this in words.' })
	})

	test('whatever is taken can be stored, fits, and is taken again unchanged', () => {
		fc.assert(
			fc.property(anyText(50), (typed) => {
				const result = note.safeParse(typed)
				if (!result.success) return
				expect(result.data.length).toBeLessThanOrEqual(40)
				expect(result.data.isWellFormed()).toBe(true)
				expect(note.parse(result.data)).toBe(result.data)
			}),
			{ numRuns: 400 },
		)
	})
})
