import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { recipeForm } from '@/lib/forms/catalogue/recipe-form'
import { recipeText, rowsIn } from '@/lib/forms/catalogue/recipe-text'
import { stockForm } from '@/lib/forms/catalogue/stock-form'
import { supplierForm } from '@/lib/forms/catalogue/supplier-form'
import { readRecipePicture, recipePicture } from '@/lib/forms/pictures/recipe-picture'
import { read, type Typed } from '@/lib/forms/read'
import type { RecipeLine } from '@/lib/recipe/recipe'
import { accent, branch, by, fixing, green, line, materialId, plant } from '../../recipe/sample'

const uuid = (n: number) => `00000000-0000-7000-8000-00000000e${String(n).padStart(3, '0')}`
const birch = branch(1, 'white birch')
const fir = green(2, 'noble fir')
const stakes = fixing(3, 'stakes')
const kale = plant(4, 'kale')
const globes = accent(5, 'brass globes')
const known = by([birch, fir, stakes, kale, globes])
const lines: readonly RecipeLine[] = [
	line(birch, { way: 'stems', count: 12 }),
	line(fir, { way: 'greens', count: 14 }),
	{ ...line(globes, { way: 'faces', count: 3 }), holding: 'lent' },
	line(stakes, { way: 'held', count: 0.25, holds: birch.id }),
]
const written = { name: 'Birch', quarter: 'winter', note: 'Late.', lines } as const
const typed = (of = recipeText(written)): Typed => ({ ...of, once: uuid(1), recipe: '', remove: [] })
const over = (field: string, row: number, value: string): Typed => {
	const form = typed()
	return { ...form, [field]: [form[field] ?? []].flat().map((each, at) => (at === row ? value : each)) }
}
const said = (form: Typed) => {
	const result = read(recipeForm(known), form)
	return result.ok ? result.value.lines : result.errors
}

describe('the card of a recipe', () => {
	test('reads back what it shows, rows to spare passed over', () => {
		expect(rowsIn(recipeText(written))).toHaveLength(lines.length + 4)
		expect(said(typed())).toEqual(lines)
	})

	test('of a new recipe has rows enough to begin with', () => {
		expect(rowsIn(recipeText(undefined))).toHaveLength(8)
	})

	test('law: any lines come back as they were', () => {
		const count = fc.integer({ min: 1, max: 9_999_000 }).map((n) => n / 1000)
		const drawn = fc.record({
			material: fc.constantFrom(birch, fir, globes).map(({ id }) => id),
			role: fc.constantFrom('thriller', 'filler', 'accent'),
			holding: fc.constantFrom('sold', 'own'),
			grows: fc.record({ way: fc.constantFrom('fixed', 'stems', 'greens', 'rim', 'faces'), count }),
		} as const)
		fc.assert(
			fc.property(fc.array(drawn, { minLength: 1, maxLength: 9 }), (some) => {
				expect(said(typed(recipeText({ ...written, lines: some })))).toEqual(some)
			}),
		)
	})

	test('a tick takes a line out, whatever is written in it; its number moves it', () => {
		expect(said({ ...over('count', 2, 'many'), remove: ['2'] })).toEqual(lines.filter((_, at) => at !== 2))
		expect(said(over('at', 2, '0'))).toEqual([lines[2], lines[0], lines[1], lines[3]])
	})

	test('what is not said is what is usual for the material', () => {
		const form = typed(recipeText(undefined))
		const row = (first: string) => [first, ...Array.from({ length: 7 }, () => '')]
		const one = { ...form, name: 'Globes', material: row(globes.id), count: row('3') }
		expect(said(one)).toEqual([
			{ material: globes.id, role: 'accent', holding: 'lent', grows: { way: 'faces', count: 3 } },
		])
	})

	test('shares are typed in per cent', () => {
		const form = typed(recipeText({ ...written, lines: [line(kale, { way: 'spacing', share: 1 })] }))
		expect(rowsIn(form)[0]?.count).toBe('100')
		expect(said(form)).toEqual([line(kale, { way: 'spacing', share: 1 })])
	})

	test.each([
		['material', 1, materialId(9), 'Choose a material of the list.'],
		['material', 1, 'fir', 'Choose a material of the list.'],
		['role', 1, 'hero', 'Choose a role.'],
		['way', 1, 'up', 'Choose how it grows.'],
		['holding', 0, 'lent', 'white birch does not come back, so it cannot be lent.'],
		['count', 1, '', 'Give a number such as 12 or 2.5.'],
		['count', 1, '0', 'Give a number from 0.001 to 9999.'],
		['count', 5, '3', 'Choose a material of the list.', 'material'],
		['holds', 3, '8', 'This line has no material: choose another.'],
		['holds', 3, '2', undefined],
		['at', 0, 'first', 'Give a number such as 12 or 2.5.'],
	] as const)('%s of line %i, "%s": %s', (field, row, value, says, at: string = field) => {
		const wanted = says === undefined ? expect.any(Array) : { [`${at}.${row}`]: says }
		expect(said(over(field, row, value))).toEqual(wanted)
	})

	test('nothing in it, or a line that is not whole', () => {
		expect(said(typed(recipeText({ ...written, lines: [] })))).toEqual({
			'material.0': 'A recipe has one line at least: choose a material.',
		})
		expect(said({ ...typed(), role: [] })).toMatchObject({ material: 'Open the recipe again: a line is not whole.' })
		const many = Array.from({ length: 61 }, () => '')
		expect(said({ ...typed(), material: many })).toMatchObject({ material: 'Sixty lines are the most.' })
	})

	test('the trouble with a line that was moved is told at the row where it stands', () => {
		const lent = over('holding', 0, 'lent')
		const at = ['9', '1', '2', '3', '', '', '', '']
		expect(said({ ...lent, at })).toEqual({ 'holding.0': 'white birch does not come back, so it cannot be lent.' })
	})
})

test('the address of a recipe’s picture goes there and back', () => {
	const path = recipePicture(uuid(7), { pot: 'box', cut: 'phone' })
	const { pathname, searchParams } = new URL(path, 'https://studio.example')
	expect(pathname).toBe(`/studio/recipes/${uuid(7)}/picture`)
	expect(readRecipePicture(searchParams)).toEqual({ pot: 'box', cut: 'phone' })
	expect(readRecipePicture(new URLSearchParams())).toEqual({ pot: 'reference', cut: 'full' })
	for (const query of ['pot=bucket', 'cut=huge', 'cut=toString'])
		expect(readRecipePicture(new URLSearchParams(query))).toBeUndefined()
})

test.each([
	['quantity', ['0', '12.5', '100000'], ['-1', '', '100001', 'many']],
	['usesBefore', ['0', '100'], ['1.5', '101', '']],
] as const)('a count of storage, %s', (field, kept, refused) => {
	const form = { once: uuid(1), material: uuid(2), client: '', quantity: '3', usesBefore: '1' }
	for (const value of kept) expect(read(stockForm, { ...form, [field]: value }).ok).toBe(true)
	for (const value of refused) expect(read(stockForm, { ...form, [field]: value }).ok).toBe(false)
})

test.each([
	['leadDays', ['0', '365'], ['1.5', '366', '-1', '']],
	['name', ['Ferrow Growers'], ['', 'x'.repeat(81), 'two\nlines']],
] as const)('a supplier, %s', (field, kept, refused) => {
	const form = { once: uuid(1), supplier: '', name: 'Ferrow', leadDays: '7', note: 'By rail.\nOn Fridays.' }
	for (const value of kept) expect(read(supplierForm, { ...form, [field]: value }).ok).toBe(true)
	for (const value of refused) expect(read(supplierForm, { ...form, [field]: value }).ok).toBe(false)
})
