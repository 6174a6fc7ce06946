import type { Page } from '@playwright/test'
import { expect, laptop, test } from '../site/story'

/** The papers of a PDF in inches: it has them in points, 72 to the inch (ISO 32000-1, 8.3.2.3). */
function papersOf(pdf: Buffer): string[] {
	const boxes = pdf.toString('latin1').matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)
	return [...boxes].map(([, width, height]) => `${inches(width)} × ${inches(height)}`)
}
const inches = (points = '') => (Number(points) / 72).toFixed(1)
const printed = async (page: Page, format: 'Letter' | 'A4') =>
	papersOf(await page.pdf({ format, preferCSSPageSize: true }))
const breaks = (element: Element) => getComputedStyle(element).breakInside

test('a client prints the design: the picture, the palette and the price, and nothing to press', async ({
	as,
	cast,
}) => {
	const page = await as('stuccoApprover', laptop)
	await page.goto(`/proposal/${cast.proposals.stucco}`)
	const picture = page.getByRole('img', { name: /^Frost and violet\. Winter, by day/ })
	await expect(picture).toBeVisible()
	await page.emulateMedia({ media: 'print' })
	await expect(page.getByRole('img')).toHaveCount(1)
	await expect(page.getByRole('region', { name: 'Your answer' })).toBeHidden()
	await expect(page.getByRole('link', { name: 'Skip this season' })).toBeHidden()
	await expect(page.getByRole('link', { name: 'To the content' })).toBeHidden()
	await expect(page.getByRole('button')).toHaveCount(0)
	const price = page.getByRole('region', { name: 'The price' })
	await expect(price).toBeVisible()
	expect(await price.evaluate(breaks)).toBe('avoid')
	expect(await picture.evaluate(breaks)).toBe('avoid')
	expect(await printed(page, 'Letter')).toEqual(['8.5 × 11.0', '8.5 × 11.0'])
	expect(await printed(page, 'A4')).toEqual(['8.3 × 11.7', '8.3 × 11.7'])
})

test('with several palettes each picture is printed once, also when one is on the wall', async ({ as, cast }) => {
	const page = await as('fieldstoneApprover', laptop)
	await page.emulateMedia({ media: 'print' })
	await page.goto(`/proposal/${cast.proposals.fieldstone}`)
	await expect(page.getByRole('img').filter({ visible: true })).toHaveCount(3)
	await page.goto(`/proposal/${cast.proposals.fieldstone}?option=b`)
	// One a place: the front door's and the boathouse's.
	const pictures = page.getByRole('img').filter({ visible: true })
	await expect(pictures).toHaveCount(2)
	const told = await pictures.evaluateAll((all) => all.map((each) => each.getAttribute('alt') ?? each.id))
	expect(new Set(told).size).toBe(2)
	await expect(page.getByRole('link', { name: /^Put it on the wall|On your wall now/ })).toHaveCount(0)
})

test('what is folded on the screen is unfolded on paper', async ({ as, cast }) => {
	const page = await as('helper', laptop)
	await page.goto('/studio/install')
	const union = page.getByRole('region', { name: cast.clients.creditUnion.name })
	await expect(union.getByText('Water from the yard')).toBeHidden()
	await page.emulateMedia({ media: 'print' })
	await expect(union.getByText('Water from the yard')).toBeVisible()
	await expect(page.getByRole('navigation')).toHaveCount(0)
})

test('the season’s ledger is printed across the paper as a table', async ({ as, cast }) => {
	const page = await as('designer', laptop)
	await page.goto(`/studio/season/${cast.seasons.winter}`)
	await page.emulateMedia({ media: 'print' })
	await expect(page.getByRole('columnheader', { name: 'Where it stands' })).toBeVisible()
	await expect(page.getByRole('button')).toHaveCount(0)
	expect(new Set(await printed(page, 'Letter'))).toEqual(new Set(['11.0 × 8.5']))
	expect(new Set(await printed(page, 'A4'))).toEqual(new Set(['11.7 × 8.3']))
})
