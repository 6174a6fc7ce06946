import { describe, expect, test } from 'vitest'
import { z } from 'zod'
import { decimalField, moneyField, text } from '@/lib/forms/fields'
import { choiceQuery, read, typed, under } from '@/lib/forms/read'

function form(...fields: [name: string, value: string | Blob][]): FormData {
	const data = new FormData()
	for (const [name, value] of fields) data.append(name, value)
	return data
}

describe('a form’s fields as text', () => {
	test('each once, and those that may come several times as lists, though none came', () => {
		const data = form(['option', 'b'], ['extra', 'wreath'], ['extra', 'garland'])
		expect(typed(data, ['extra', 'without'])).toEqual({ option: 'b', extra: ['wreath', 'garland'], without: [] })
	})

	test('of a name sent twice that stands for one, the first counts', () => {
		expect(typed(form(['option', 'a'], ['option', 'b']))).toEqual({ option: 'a' })
	})

	test('a file is no text', () => {
		expect(typed(form(['photo', new Blob(['x'])], ['name', 'urn']))).toEqual({ photo: '', name: 'urn' })
		expect(typed(form(['note', new Blob(['x'])], ['note', 'lower']), ['note'])).toEqual({ note: ['lower'] })
	})

	test('what the framework adds is left out', () => {
		expect(typed(form(['$ACTION_ID_40ab', ''], ['name', 'urn']))).toEqual({ name: 'urn' })
	})

	test('a name of the language itself is a name like another, and changes nothing', () => {
		const fields = typed(form(['__proto__', 'x'], ['constructor', 'y'], ['name', 'urn']))
		expect(fields.name).toBe('urn')
		expect(Object.getPrototypeOf(fields)).toBe(Object.prototype)
		expect(read(z.strictObject({ name: text(9) }), fields).ok).toBe(false)
	})
})

const schema = z
	.strictObject({
		name: text(5, { min: 1 }),
		pots: z.array(z.strictObject({ cents: moneyField })),
		low: decimalField(0, 9),
		high: decimalField(0, 9),
	})
	.refine(({ low, high }) => low <= high, { message: 'It would end before it begins.', path: ['high'] })

describe('what was read', () => {
	test('is the value in the core’s own types', () => {
		const fields = { name: ' urn ', pots: [{ cents: '12.5' }], low: '1', high: '2.5' }
		expect(read(schema, fields)).toEqual({
			ok: true,
			value: { name: 'urn', pots: [{ cents: 1250 }], low: 1, high: 2.5 },
		})
	})

	test('or a sentence for each field, the first that went wrong in it, by its path', () => {
		const fields = { name: 'planter\u0000', pots: [{ cents: '1' }, { cents: '1e9' }], low: '10', high: 'x' }
		expect(read(schema, fields)).toEqual({
			ok: false,
			errors: {
				name: 'This holds characters that cannot be stored. Type it again in plain text.',
				'pots.1.cents': 'Give an amount such as 12.50, to the cent.',
				low: 'Give a number from 0 to 9.',
				high: 'Give a number such as 12 or 2.5.',
			},
		})
	})

	test('a rule across fields is told at the field that it names', () => {
		const fields = { name: 'urn', pots: [], low: '7', high: '3' }
		expect(read(schema, fields)).toEqual({ ok: false, errors: { high: 'It would end before it begins.' } })
	})

	test.each([
		{ name: 'a field that nobody asked for', fields: { name: 'urn', pots: [], low: '1', high: '2', totalCents: '1' } },
		{ name: 'no fields at all', fields: null },
		{ name: 'a list', fields: [] },
	])('$name is an error of the form', ({ fields }) => {
		const result = read(schema, fields)
		expect(result.ok ? {} : Object.keys(result.errors)).toEqual(['form'])
	})
})

describe('errors of a part', () => {
	test('are told by their paths within it', () => {
		const errors = { 'draft.title': 'a', 'draft.options.0.name': 'b', version: 'c' }
		expect(under('draft', errors)).toEqual({ title: 'a', 'options.0.name': 'b', version: 'c' })
	})

	test('a part of the same name further in keeps its place', () => {
		expect(under('draft', { 'draft.words.draft.0': 'a', 'redraft.title': 'b' })).toEqual({
			'words.draft.0': 'a',
			'redraft.title': 'b',
		})
	})
})

describe('a choice in an address', () => {
	test.each([
		{ name: 'nothing picked', fields: {}, is: '' },
		{ name: 'a palette', fields: { option: 'b' }, is: 'option=b' },
		{ name: 'no palette', fields: { option: '', extra: ['wreath'] }, is: 'extra=wreath' },
		{
			name: 'all of it',
			fields: { option: 'a', extra: ['wreath', 'garland'], without: ['c1'], purchaseOrder: '77', once: 'x' },
			is: 'option=a&extra=wreath&extra=garland&without=c1',
		},
		{
			name: 'another palette for a place',
			fields: { option: 'a', place: ['00000000-0000-7000-8000-00000000a002 b', 'Boathouse c', ''] },
			is: 'option=a&at.00000000-0000-7000-8000-00000000a002=b',
		},
		{
			name: 'the revision that it is of',
			fields: { option: 'a', revision: 'c0ffee42'.repeat(8) },
			is: `option=a&revision=${'c0ffee42'.repeat(8)}`,
		},
		{ name: 'no hash is no revision', fields: { option: 'a', revision: '2' }, is: 'option=a' },
		{ name: 'one extra alone', fields: { option: 'c', extra: 'wreath' }, is: 'option=c&extra=wreath' },
		{
			name: 'two palettes are none',
			fields: { option: ['a', 'b'], without: ['c2', 'c3'] },
			is: 'without=c2&without=c3',
		},
		{ name: 'what would break out of it', fields: { option: 'a&extra=x#y' }, is: 'option=a%26extra%3Dx%23y' },
	])('$name: $is', ({ fields, is }) => {
		expect(choiceQuery(fields).toString()).toBe(is)
	})
})
