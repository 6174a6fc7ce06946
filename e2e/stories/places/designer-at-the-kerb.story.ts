import type { Page } from '@playwright/test'
import sharp from 'sharp'
import { countIn } from '../../site/record'
import { expect, phone, test } from '../../site/story'

/** A front of blue boards with a red door, as a phone would send it. */
async function front(): Promise<{ name: string; mimeType: string; buffer: Buffer }> {
	const part = (background: string, width: number, height: number) => ({
		create: { width, height, channels: 3 as const, background },
	})
	const buffer = await sharp({ create: { width: 2400, height: 1800, channels: 3, background: '#5f7488' } })
		.composite([{ input: part('#7a2e33', 600, 1200), left: 900, top: 600 }])
		.jpeg({ quality: 85 })
		.toBuffer()
	return { name: 'front.jpg', mimeType: 'image/jpeg', buffer }
}

const status = (page: Page) => page.getByRole('status').filter({ hasText: /Kept|Sent|Sending/ })
const send = (page: Page) => page.getByRole('button', { name: 'Send to the studio' })

async function writePlace(page: Page, name: string): Promise<void> {
	await page.getByRole('radio', { name: 'a new place' }).check()
	await page.getByLabel('Name of the place').fill(name)
	await page.getByLabel('Address').fill('9 Cooper’s Lane, Wrenholt')
	await page.getByRole('radio', { name: 'clapboard' }).check()
}

async function writeContainer(page: Page, nth: number, name: string): Promise<void> {
	const container = page.getByRole('region', { name: `Container ${nth}` })
	await container.getByLabel('Where it stands').fill(name)
	await container.getByRole('radio', { name: 'urn' }).check()
	await container.getByLabel('Across at the rim', { exact: true }).fill('18 1/2')
	await container.getByLabel('Across at the foot', { exact: true }).fill('12')
	await container.getByLabel('Height', { exact: true }).fill('24')
	await container.getByRole('radio', { name: 'cast stone' }).check()
	await container.getByRole('radio', { name: 'shade' }).check()
	await container.getByRole('checkbox', { name: 'a hose' }).check()
}

test('a designer writes down a place and two containers where there is no reception, and it is sent by itself', async ({
	as,
	cast,
	site,
}) => {
	const page = await as('designer', phone)
	const client = cast.clients.vet.id
	await page.goto(`/studio/clients/${client}`)
	await page.getByRole('link', { name: 'At the kerb' }).click()
	await expect(page.getByRole('button', { name: 'Same again' })).toBeVisible()
	await page.context().setOffline(true)

	await page.getByLabel('Photo of the front').setInputFiles(await front())
	await expect(page.getByRole('img', { name: 'The photo, as it will be sent' })).toBeVisible()
	await writePlace(page, 'Garden gate')
	await writeContainer(page, 1, 'Left of the gate')
	const first = page.getByRole('region', { name: 'Container 1' })
	const drawing = first.getByRole('img', { name: /cut open from the front/ })
	await expect(drawing).toHaveAccessibleName(/18.5 in across at the rim, 12 in across at the foot and 24 in high/)
	await first.getByLabel('Height', { exact: true }).fill('23')
	await page.getByRole('button', { name: 'Add three quarters to the measure' }).click()
	await expect(first.getByLabel('Height', { exact: true })).toHaveValue('23¾')
	await expect(status(page)).toHaveText(/^Kept on this phone as you write/)

	await page.getByRole('button', { name: 'Same again' }).click()
	const second = page.getByRole('region', { name: 'Container 2' })
	await expect(second.getByLabel('Height', { exact: true })).toHaveValue('23¾')
	await expect(second.getByRole('radio', { name: 'urn' })).toBeChecked()
	await expect(second.getByRole('checkbox', { name: 'a hose' })).toBeChecked()

	await send(page).click()
	await expect(page.getByRole('link', { name: /^Container 2, where it stands/ })).toBeVisible()
	await second.getByLabel('Where it stands').fill('Right of the gate')
	await send(page).click()
	await expect(status(page)).toHaveText(/^Kept on this phone, not sent yet: Garden gate, 2 containers\./)
	await expect(page.getByRole('listitem').filter({ hasText: 'Garden gate, 2 containers' })).toContainText(
		'Kept on this phone, not sent yet.',
	)

	await page.context().setOffline(false)
	await expect(status(page)).toHaveText(/^Sent: Garden gate, 2 containers\./)
	await expect(page.getByRole('heading', { name: 'On this phone' })).toHaveCount(0)
	await expect(page.getByRole('radio', { name: 'Garden gate' })).toBeVisible()

	await page.goto(`/studio/clients/${client}`)
	const place = page.getByRole('region', { name: 'Garden gate' })
	await expect(place).toHaveCount(1)
	await expect(place.getByRole('link', { name: /^Card of (Left|Right) of the gate$/ })).toHaveCount(2)
	await expect(place.getByRole('button', { name: /^Drop / })).toHaveCount(2)
	const wall = 'SELECT count(*) FROM place WHERE name = ? AND wall_hex LIKE ?'
	expect(countIn(site, wall, 'Garden gate', '#5f7%')).toBe(1)
	expect(
		countIn(site, 'SELECT count(*) FROM container WHERE name LIKE ? AND height_cm = 60.325', '% of the gate'),
	).toBe(2)
})

test('an answer that is lost on its way makes nothing twice', async ({ as, cast, site, wrong }) => {
	const page = await as('designer', phone)
	await page.goto(`/studio/clients/${cast.clients.dental.id}/kerb`)
	await expect(page.getByRole('button', { name: 'Same again' })).toBeVisible()
	await page.route('**/kerb/keep', async (route) => {
		await route.fetch()
		await route.abort('connectionreset')
	})
	await writePlace(page, 'Lane door')
	await writeContainer(page, 1, 'By the lane door')
	await send(page).click()
	await expect(page.getByRole('button', { name: 'Try again' })).toBeVisible()
	await expect(status(page)).toHaveText(/^Kept on this phone, not sent yet: Lane door, 1 container\./)
	const made = () => countIn(site, 'SELECT count(*) FROM place WHERE name = ?', 'Lane door')
	expect(made()).toBe(1)

	await page.unroute('**/kerb/keep')
	await page.reload()
	await expect(status(page)).toHaveText(/^Sent: Lane door, 1 container\./)
	expect(made()).toBe(1)
	expect(countIn(site, 'SELECT count(*) FROM container WHERE name = ?', 'By the lane door')).toBe(1)
	expect(wrong.splice(0).every((each) => each.includes('ERR_CONNECTION_RESET'))).toBe(true)
})

test('what is half written is there again after the page was closed, until it is discarded or one signs out', async ({
	as,
	cast,
	site,
}) => {
	const page = await as('designer', phone)
	const path = `/studio/clients/${cast.clients.vet.id}/kerb`
	await page.goto(path)
	await page.getByLabel('Photo of the front').setInputFiles(await front())
	await writePlace(page, 'Back steps')
	await page.getByRole('button', { name: 'Another container' }).click()
	await writeContainer(page, 2, 'On the steps')
	await expect(status(page)).toHaveText(/^Kept on this phone as you write/)
	await page.close()

	const again = await page.context().newPage()
	await again.goto(path)
	await expect(again.getByLabel('Name of the place')).toHaveValue('Back steps')
	const second = again.getByRole('region', { name: 'Container 2' })
	await expect(second.getByLabel('Across at the rim', { exact: true })).toHaveValue('18 1/2')
	await expect(second.getByRole('radio', { name: 'urn' })).toBeChecked()
	await expect(again.getByRole('img', { name: 'The photo, as it will be sent' })).toBeVisible()

	await again.getByText('Discard what is written here').click()
	await again.getByRole('button', { name: 'Discard it for good' }).click()
	await expect(again.getByLabel('Name of the place')).toHaveValue('')
	await again.reload()
	await expect(again.getByRole('button', { name: 'Same again' })).toBeVisible()
	await expect(again.getByLabel('Name of the place')).toHaveValue('')

	await writePlace(again, 'Back steps')
	await expect(status(again)).toHaveText(/^Kept on this phone as you write/)
	await again.getByRole('button', { name: 'Sign out' }).click()
	await expect(again.getByLabel('Mail address')).toBeVisible()
	const kept = await again.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name))
	expect(kept).toEqual([])
	expect(countIn(site, 'SELECT count(*) FROM place WHERE name = ?', 'Back steps')).toBe(0)
})

test('without scripts one container at a time is written down, and what is wrong is told beside its box', async ({
	as,
	cast,
}) => {
	const page = await as('designer', { ...phone, javaScriptEnabled: false })
	await page.goto(`/studio/clients/${cast.clients.vet.id}/kerb`)
	await page.getByLabel('Photo of the front').setInputFiles(await front())
	await writePlace(page, 'Mews door')
	await writeContainer(page, 1, 'By the mews')
	await page.getByLabel('Height', { exact: true }).fill('tall')
	await send(page).click()
	await expect(page.getByRole('alert')).toContainText('Height')
	await expect(page.getByLabel('Height', { exact: true })).toHaveAccessibleDescription(/18 1\/2/)
	await expect(page.getByLabel('Name of the place')).toHaveValue('Mews door')
	await page.getByLabel('Height', { exact: true }).fill('24')
	await send(page).click()
	await expect(status(page)).toHaveText(/^Sent\./)
	await expect(page.getByRole('radio', { name: 'Mews door' })).toBeChecked()

	await writeContainer(page, 1, 'Across from it')
	await send(page).click()
	await expect(status(page)).toHaveText(/^Sent\./)
	await page.goto(`/studio/clients/${cast.clients.vet.id}`)
	const place = page.getByRole('region', { name: 'Mews door' })
	await expect(place.getByRole('link', { name: /^Card of (By the mews|Across from it)$/ })).toHaveCount(2)
})
