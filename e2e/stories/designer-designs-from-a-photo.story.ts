import type { Locator } from '@playwright/test'
import sharp from 'sharp'
import { expect, laptop, test } from '../site/story'

/** A front of blue boards with a red door and a brass sign, as a phone would send it. */
function front(): Promise<Buffer> {
	const part = (background: string, width: number, height: number) => ({
		create: { width, height, channels: 3 as const, background },
	})
	return sharp({ create: { width: 1200, height: 900, channels: 3, background: '#5f7488' } })
		.composite([
			{ input: part('#7a2e33', 300, 600), left: 450, top: 300 },
			{ input: part('#b08d4a', 260, 130), left: 120, top: 180 },
		])
		.jpeg({ quality: 85 })
		.toBuffer()
}

test('a designer goes from a photo to three published options for three containers, in thirty clicks and two lines of typing', async ({
	as,
	cast,
	mailbox,
}) => {
	const page = await as('designer', laptop)
	let clicks = 0
	const press = async (what: Locator) => {
		clicks += 1
		await what.click()
	}

	// The season is planned once for all clients.
	await page.goto('/studio?plan')
	const year = Number(cast.today.slice(0, 4)) + 1
	await page.getByLabel('Season', { exact: true }).selectOption('autumn')
	await page.getByLabel('Year in which it begins').fill(String(year))
	await page.getByLabel('Answer by', { exact: true }).fill(`${year}-08-20`)
	await page.getByLabel('Goes in from', { exact: true }).fill(`${year}-09-06`)
	await page.getByLabel('Goes in until', { exact: true }).fill(`${year}-09-14`)
	await page.getByRole('button', { name: 'Plan this season' }).click()
	await expect(page.getByRole('heading', { level: 1 })).toContainText(`autumn ${year}`)
	const season = page.url()

	await page.goto(`/studio/clients/${cast.clients.bakery.id}`)
	const kept = await page.getByRole('button', { name: /^Drop / }).count()
	await page
		.getByLabel('Take the colours from a photo')
		.setInputFiles({ name: 'front.jpg', mimeType: 'image/jpeg', buffer: await front() })
	clicks += 1
	const names = page.getByRole('textbox', { name: /^Name of colour/ })
	await expect(names).toHaveCount(3)
	await press(page.getByRole('button', { name: 'Keep these colours' }))
	await expect(names).toHaveCount(0)
	await expect(page.getByRole('button', { name: /^Drop / })).toHaveCount(kept + 3)

	await page.goto(season)
	await press(page.getByRole('button', { name: `Begin a proposal for ${cast.clients.bakery.name}` }))
	for (const pot of ['Left of the door', 'Right of the door', 'Window box'])
		await press(page.getByRole('checkbox', { name: pot, exact: true }))
	await press(page.getByRole('button', { name: 'Propose palettes for this wall' }))
	const options = page.getByRole('group', { name: /^Palette \d$/ })
	await expect(options).toHaveCount(3)
	await expect(page.getByRole('img', { name: /^Autumn, by day: three containers/ })).toHaveCount(3)
	await page.getByRole('textbox', { name: 'Title' }).fill('Autumn before blue boards')
	await page.getByRole('textbox', { name: 'Letter' }).fill('Three ways to take up your brass and your red door.')
	await expect(page.getByRole('region', { name: 'Price' })).toHaveAttribute('aria-busy', 'false')

	const count = page.getByRole('textbox', { name: /^Count, .*line 1$/ }).first()
	const total = page.getByRole('region', { name: 'Price' }).locator('b').getByText(/^\$/).first()
	const [before, priced] = [String(await count.inputValue()), String(await total.textContent())]
	await count.fill(String(Number(before) + 3))
	await expect(total).not.toHaveText(priced)
	await expect(page.getByRole('checkbox', { name: /^Keep this count, .*line 1$/ }).first()).toBeChecked()

	await press(page.getByRole('button', { name: 'Publish to the client' }))
	await press(page.getByRole('button', { name: 'Publish', exact: true }))
	await expect(page.getByText('Published. The client’s contacts hear of it by mail.')).toBeVisible()
	expect(clicks).toBeLessThanOrEqual(30)
	process.stdout.write(`from a photo to three published options: ${clicks} clicks, two lines typed\n`)

	const mail = await mailbox.next(cast.people.bakeryApprover.address, /^Your design for autumn/)
	expect(mail.text).toContain('Autumn before blue boards')
})
