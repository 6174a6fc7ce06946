import type { Locator, Page } from '@playwright/test'
import { expect, phone, test } from '../../site/story'

const drawn = (picture: Locator) =>
	expect
		.poll(() => picture.evaluate((img) => img instanceof HTMLImageElement && img.complete && img.naturalWidth > 0))
		.toBe(true)

/** Goes on with the keyboard until `target` has the focus, and presses it. */
async function pressByKeyboard(page: Page, target: Locator, key: 'Enter' | 'Space'): Promise<void> {
	await target.focus()
	await page.keyboard.press(key)
}

test('a homeowner compares the pictures by day and in the evening, on a phone, by keyboard, and hears what they show', async ({
	as,
	cast,
}) => {
	const page = await as('clapboardApprover', phone)
	await page.goto(`/proposal/${cast.proposals.clapboard}`)
	const pictures = page.getByRole('img', { name: /two containers before a clapboard wall/ })
	await expect(pictures).toHaveCount(3)
	for (const picture of await pictures.all()) await drawn(picture)
	const said = await pictures.evaluateAll((all) => all.map((img) => img.getAttribute('alt') ?? ''))
	expect(said[0]).toMatch(/^Rose and pewter\. Winter, by day: .*red dogwood.*pewter/i)
	expect(said[1]).toMatch(/^Brass and navy\. Winter, by day: .*gold-twig dogwood.*brass/i)
	for (const words of said) expect(words).not.toMatch(/\$|CANARY|margin|cost/i)
	const hours = page.getByRole('navigation', { name: 'Hour of the picture' })

	await pressByKeyboard(page, page.getByRole('link', { name: /^Put it on the wall\s*: Brass and navy$/ }), 'Enter')
	await expect(pictures).toHaveCount(1)
	await expect(hours).toHaveCount(0)
	await pressByKeyboard(page, page.getByRole('checkbox', { name: /Two strings of warm lights/ }), 'Space')
	await expect(hours).toBeVisible()
	await pressByKeyboard(page, hours.getByRole('link', { name: 'In the evening' }), 'Enter')
	await expect(pictures).toHaveAccessibleName(/^Brass and navy\. Winter, in the evening: /)
	await drawn(pictures)
	expect(await pictures.evaluate((img) => (img instanceof HTMLImageElement ? img.currentSrc : ''))).toContain(
		'hour=evening',
	)
	await pressByKeyboard(page, page.getByRole('link', { name: 'See all side by side' }), 'Enter')
	await expect(pictures).toHaveCount(3)
	await expect(pictures.nth(2)).toHaveAccessibleName(/^Bone and charcoal\. Winter, in the evening: /)
})
