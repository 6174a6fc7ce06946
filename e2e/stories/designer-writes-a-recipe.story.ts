import type { Locator, Page } from '@playwright/test'
import { expect, laptop, test } from '../site/story'

/** Material, count, and what else is said of a line of the recipe; the rest is as usual. */
const lines = [
	['red dogwood', '11', {}],
	['noble fir', '10', {}],
	['boxwood', '9', {}],
	['cedar', '9', {}],
	['clusters of brass globes', '1', {}],
	['bamboo stakes', '0.25', { Holds: '1' }],
] as const

const rowOf = (page: Page, name: string) => page.getByRole('row', { name: new RegExp(`^${name}`) })
const price = (page: Page) => page.getByRole('region', { name: 'Price' })

async function swap(within: Locator, material: string, how: RegExp): Promise<void> {
	await within
		.getByRole('button', { name: new RegExp(`^Use another for ${material}`) })
		.first()
		.click()
	const others = within.page().getByRole('dialog', { name: `Instead of ${material}` })
	await others.getByRole('button', { name: how }).click()
	await expect(others).toBeHidden()
}

test('a designer writes a recipe, sees it grown to a box, and swaps its stems in a proposal', async ({ as, cast }) => {
	const page = await as('designer', laptop)
	await page.goto('/studio')
	await page.getByRole('link', { name: 'Recipes', exact: true }).click()
	await page.getByRole('link', { name: 'Write a recipe' }).click()
	await page.getByLabel('Name', { exact: true }).fill('Copper and plum')
	for (const [at, [material, count, more]] of lines.entries()) {
		const of = (label: string) => page.getByLabel(`${label}, line ${at + 1}`, { exact: true })
		await of('Material').selectOption({ label: material })
		await of('Count or %').fill(count)
		for (const [label, value] of Object.entries(more)) await of(label).selectOption(value)
	}
	await page.getByRole('button', { name: 'Save the recipe' }).click()
	await expect(page.getByRole('alert').getByRole('link')).toHaveText('Name: another recipe has this name.')
	await page.getByLabel('Name', { exact: true }).fill('Red stems and brass')
	await page.getByRole('button', { name: 'Save the recipe' }).click()

	await expect(page.getByRole('heading', { level: 1, name: 'Red stems and brass' })).toBeVisible()
	const box = (material: string) => rowOf(page, material).getByRole('cell').nth(3)
	await expect(page.getByRole('columnheader', { name: '36 in × 8 in box, by a wall' })).toBeVisible()
	await expect(box('red dogwood')).toHaveText('24 stems')
	await expect(box('bamboo stakes')).toHaveText('6 pieces')
	await expect(rowOf(page, 'Tallest, above the rim').getByRole('cell').nth(3)).toHaveText(/^\d+(\.\d)? in$/)
	await expect(page.getByRole('img', { name: /^Winter, by day: one container.*11 red dogwood/ })).toBeVisible()

	await page.goto(`/studio/proposal/${cast.proposals.bookshop}`)
	await page.getByRole('button', { name: 'Add a palette' }).click()
	const palette = page.getByRole('group', { name: 'Palette 2', exact: true })
	await palette.getByLabel('Put a recipe into palette 2').selectOption({ label: 'Red stems and brass' })
	const stems = palette.getByRole('combobox', { name: /^Material, .*line 1$/ })
	const greens = palette.getByRole('combobox', { name: /^Material, .*line 2$/ })
	const count = palette.getByRole('textbox', { name: /^Count, .*line 1$/ }).first()
	await expect(stems).toHaveCount(2)
	for (const pot of [0, 1]) await expect(stems.nth(pot)).toHaveValue(cast.materials.redDogwood)
	const pictured = palette.getByRole('img').first()
	await expect(pictured).toHaveAttribute('alt', /red dogwood/)
	await expect(price(page)).toHaveAttribute('aria-busy', 'false')
	const [before, priced] = [await count.inputValue(), String(await price(page).textContent())]

	await swap(palette, 'red dogwood', /^Use it in every pot\s*: gold-twig dogwood$/)
	for (const pot of [0, 1]) await expect(stems.nth(pot)).toHaveValue(cast.materials.goldDogwood)
	await expect(count).toHaveValue(before)
	await expect(pictured).toHaveAttribute('alt', /gold-twig dogwood/)
	await expect(price(page)).toHaveAttribute('aria-busy', 'false')
	await expect(price(page)).not.toHaveText(priced)

	await swap(palette, 'noble fir', /^Use it in this pot\s*: silver fir$/)
	await expect(greens.nth(0)).toHaveValue(cast.materials.silverFir)
	await expect(greens.nth(1)).toHaveValue(cast.materials.nobleFir)
})

test('a designer changes a recipe’s lines before any script arrives', async ({ as }) => {
	const page = await as('designer', { ...laptop, javaScriptEnabled: false })
	await page.goto('/studio/recipes')
	await page.getByRole('link', { name: 'Brass and navy' }).click()
	await expect(page.getByLabel('Material, line 7', { exact: true })).not.toHaveValue('')
	await page.getByLabel('Order, line 2', { exact: true }).fill('0')
	await page.getByLabel('Remove, line 7').check()
	await page.getByLabel('Whose it is, line 1', { exact: true }).selectOption('lent')
	await page.getByRole('button', { name: 'Save the recipe' }).click()
	await expect(page.getByRole('alert').getByRole('link')).toHaveText(
		'Whose it is, line 1: gold-twig dogwood does not come back, so it cannot be lent.',
	)
	await expect(page.getByLabel('Remove, line 7')).toBeChecked()
	await page.getByLabel('Whose it is, line 1', { exact: true }).selectOption('sold')
	await page.getByRole('button', { name: 'Save the recipe' }).click()
	await expect(page.getByText('Kept.')).toBeVisible()
	await expect(page.getByRole('row').nth(1)).toContainText('noble fir')
	await expect(page.getByRole('row', { name: /^bamboo stakes/ })).toHaveCount(0)
})
