import { fortyClients } from '../site/forty'
import { handOn } from '../site/hand'
import { countIn } from '../site/record'
import { expect, laptop, test } from '../site/story'

const drafts = "SELECT count(*) FROM proposal WHERE state = 'drafting' AND revision_number = 0 AND palette_count = 2"

const out = "SELECT count(*) FROM proposal WHERE state = 'waiting for an answer'"
/** Each is frozen, chained and mailed in a transaction of its own. */
const publishingMs = 60_000

/** Forty arrivals are two hundred acts, each waiting for the disk. */
const seedingMs = 300_000

test('forty clients from collection to published in a sitting', async ({ as, cast, site }) => {
	test.setTimeout(seedingMs)
	await fortyClients(site)
	const before = countIn(site, drafts)
	const page = await as('designer', laptop)
	const hand = await handOn(page)
	await page.goto('/studio')
	await page.getByRole('link', { name: 'Draft for them from the collection' }).click()
	await expect(page.getByText('41 clients have no design yet; all are ticked.')).toBeVisible()
	await page.getByRole('checkbox', { name: cast.clients.newcomer.name }).click()
	await page.getByRole('button', { name: 'Draft for those ticked' }).click()
	await expect(page.getByText('40 drafts were made.')).toBeVisible()
	await expect(page.getByRole('checkbox')).toHaveCount(1)
	expect(countIn(site, drafts)).toBe(before + 40)

	const clicks = hand.clicks()
	expect([clicks, hand.keys()]).toEqual([3, 0])
	const each = (clicks - 3) / 39
	test.info().annotations.push({ type: 'per client after the first', description: `${each} clicks, 0 keys` })
	expect(each).toBe(0)

	const again = page.getByRole('region', { name: /^To look at again: / })
	const well = page.getByRole('region', { name: /^Fits as it is: / })
	await expect(again.getByText(/would be lost against the stucco/).first()).toBeVisible()
	const listed = (await again.getByRole('link').count()) + (await well.getByRole('link').count())
	expect(listed).toBe(countIn(site, drafts.replace('= 2', '> 0')))

	await well.getByRole('link').first().click()
	await expect(page.getByRole('textbox', { name: 'Palette 2, its name' })).toHaveValue(/./)
	await expect(page.getByRole('textbox', { name: 'Title' })).toHaveValue('Winter at your door')
	expect(hand.clicks()).toBe(clicks + 1)

	const isOut = countIn(site, out)
	await page.getByRole('link', { name: 'Season', exact: true }).click()
	await page.getByRole('link', { name: 'Publish all that are ready' }).click()
	const ready = page.getByRole('checkbox', { name: /^Publish / })
	const ticked = await ready.count()
	expect(ticked).toBeGreaterThanOrEqual(40)
	await page.getByRole('button', { name: 'Publish what is ticked' }).click()
	await expect(page.getByRole('heading', { name: /published$/ })).toBeVisible({ timeout: publishingMs })
	await expect(ready).toHaveCount(0)
	expect(countIn(site, out)).toBe(isOut + ticked)
	expect([hand.clicks() - clicks, hand.keys()]).toEqual([4, 0])
})

test('a house design is made before scripts arrive, and what was typed is kept', async ({ as, cast }) => {
	const page = await as('designer', { ...laptop, javaScriptEnabled: false })
	await page.goto(`/studio/season/${cast.seasons.winter}`)
	await page.getByRole('link', { name: 'The collection', exact: true }).click()
	await page.getByRole('link', { name: 'Add a design' }).click()
	await page.getByLabel('Name of the design').fill('BELL BRASS')
	await page.getByLabel('Name of colour 1', { exact: true }).fill('Kelp')
	await page.getByRole('button', { name: 'Save the design' }).click()
	await expect(page.getByRole('main').getByRole('alert')).toContainText(/another one in this collection has that name/i)
	await expect(page.getByLabel('Name of colour 1', { exact: true })).toHaveValue('Kelp')
	await page.getByLabel('Name of the design').fill('Kelp and sand')
	await page.getByLabel('Recipe for pots and urns').selectOption('Frost and violet')
	await page.getByRole('button', { name: 'Save the design' }).click()
	await expect(page.getByText('“Kelp and sand” has one colour alone: a palette takes two at least.')).toBeVisible()
	await expect(page.getByRole('link', { name: 'Apply it to clients' })).toHaveCount(0)

	await page.getByRole('link', { name: 'Kelp and sand' }).click()
	await page.getByRole('button', { name: 'Remove the design' }).click()
	await expect(page.getByRole('link', { name: 'Kelp and sand' })).toHaveCount(0)
	await expect(page.getByRole('link', { name: 'Apply it to clients' })).toBeVisible()
})

test('a draft is started from what another client has', async ({ as, cast }) => {
	const page = await as('designer', laptop)
	await page.goto(`/studio/season/${cast.seasons.winter}`)
	await page.getByRole('link', { name: `Start from… for ${cast.clients.newcomer.name}` }).click()
	await expect(page.getByText('They have had no proposal yet.')).toBeVisible()
	await page.getByLabel('Whose proposal').selectOption({ value: cast.proposals.inn })
	await page.getByRole('button', { name: 'Start as theirs' }).click()
	await expect(page.getByText('The draft is started: look it through and tune it.')).toBeVisible()
	await expect(page.getByRole('textbox', { name: 'Palette 1, its name' })).toHaveValue('Rust and moss')
	await expect(page.getByRole('textbox', { name: 'Letter' })).toHaveValue('')
})
