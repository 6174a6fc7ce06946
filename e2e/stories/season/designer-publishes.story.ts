import type { Page } from '@playwright/test'
import { addDays } from '@/lib/units/day'
import { linkIn } from '../../site/mailbox'
import { groupOn, rowOf } from '../../site/season'
import { expect, laptop, test } from '../../site/story'

const notice = 'A preview of the saved draft: nobody else sees it. Back to the desk'

/** All that the page says, as one line. */
const words = async (page: Page) => String(await page.getByRole('main').textContent()).replaceAll(/\s+/g, ' ')

const save = (page: Page) => page.getByRole('button', { name: 'Save the draft' })
const status = (page: Page) => page.getByRole('region', { name: 'Save and publish' }).getByRole('status')
const title = (page: Page) => page.getByRole('textbox', { name: 'Title' })

test('a designer finishes a draft, sees the price follow, and publishes what the preview showed', async ({
	as,
	cast,
	mailbox,
}) => {
	const { bicyclesApprover: jory } = cast.people
	const page = await as('designer', laptop)
	await page.goto('/studio')
	await rowOf(groupOn(page, 'Waiting for us'), cast.clients.bicycles.name)
		.getByRole('link', { name: /^Finish/ })
		.click()
	const price = page.getByRole('region', { name: 'Price' })
	const total = price.locator('b').getByText(/^\$/)
	const costing = price.getByText(/^margin/)
	await expect(total).toHaveText('$555.34')
	const costBefore = String(await costing.textContent())
	await page.getByRole('button', { name: 'Add an extra' }).scrollIntoViewIfNeeded()
	await expect(total).toBeInViewport()
	await expect(save(page)).toBeInViewport({ ratio: 1 })

	await title(page).fill('A rust-red door in the snow')
	const hazel = page.getByRole('textbox', { name: 'Count, Rust and moss, Workshop door, line 1' })
	await expect(hazel).toHaveValue('5')
	await hazel.fill('9')
	await expect(total).not.toHaveText('$555.34')
	await expect(costing).not.toHaveText(costBefore)
	await price.getByText('The client’s lines').click()
	await expect(price.getByText('Workshop door').first().locator('..')).toContainText('$')
	await page.getByRole('textbox', { name: 'Colour 1', exact: true }).fill('#c4562b')
	await page.getByRole('textbox', { name: 'Name of colour 1' }).fill('Bellows red')
	await page.getByLabel('Goes in until').fill(addDays(cast.today, 57))
	await expect(price).toHaveAttribute('aria-busy', 'false')
	const promised = String(await total.textContent())
	await save(page).click()
	await expect(status(page)).toHaveText('Saved.')

	await page.getByRole('link', { name: 'Preview' }).click()
	await expect(page.getByRole('heading', { name: 'A rust-red door in the snow' })).toBeVisible()
	await expect(page.getByRole('row', { name: /^Total/ })).toContainText(promised)
	await expect(page.getByText('Bellows red').first()).toBeVisible()
	expect(await words(page)).toContain(notice)
	const previewed = (await words(page)).replace(notice, '')
	await page.getByRole('link', { name: 'Back to the desk' }).click()
	await page.getByRole('button', { name: 'Publish to the client' }).click()
	await page.getByRole('button', { name: 'Publish', exact: true }).click()
	await expect(page.getByText('Published. The client’s contacts hear of it by mail.')).toBeVisible()

	const mail = await mailbox.next(jory.address, /^Your design for winter/)
	expect(mail.text).toContain('A rust-red door in the snow')
	expect(mail.text).toContain(promised)
	const client = await as('bicyclesApprover', laptop)
	await client.goto(linkIn(mail))
	await expect(client.getByRole('heading', { name: 'A rust-red door in the snow' })).toBeVisible()
	expect(await words(client)).toBe(previewed)
	const [, goesIn = ''] = /Goes in:\s+(.+)/.exec(mail.text) ?? []
	await client.goto(`/home/${cast.clients.bicycles.id}`)
	await expect(client.getByRole('region', { name: /^Design for winter/ })).toContainText(`It goes in ${goesIn}.`)
})

test('a draft saved in two windows shows both texts, and either can be kept', async ({ as, cast }) => {
	const desk = `/studio/proposal/${cast.proposals.bookshop}`
	const here = await as('designer', laptop)
	const there = await here.context().newPage()
	await here.goto(desk)
	await there.goto(desk)
	await title(there).fill('Pale leaves, from the other window')
	await save(there).click()
	await expect(status(there)).toHaveText('Saved.')

	await title(here).fill('Pale leaves, from this window')
	await save(here).click()
	const both = here.getByRole('main').getByRole('alert')
	await expect(both.getByRole('row').nth(1).getByRole('cell')).toHaveText([
		'Pale leaves, from this window',
		'Pale leaves, from the other window',
	])
	await both.getByRole('button', { name: 'Keep what is here' }).click()
	await expect(status(here)).toHaveText('Saved.')
	await expect(both).toHaveCount(0)
	await here.reload()
	await expect(title(here)).toHaveValue('Pale leaves, from this window')

	await title(there).fill('Pale leaves, once more')
	await save(there).click()
	await there.getByRole('button', { name: 'Take what is there' }).click()
	await expect(title(there)).toHaveValue('Pale leaves, from this window')
	await title(there).fill('Pale leaves for a dark street')
	await save(there).click()
	await expect(status(there)).toHaveText('Saved.')
	await here.reload()
	await expect(title(here)).toHaveValue('Pale leaves for a dark street')
})

test('what was typed is saved by itself, and is still there on coming back', async ({ as, cast }) => {
	const page = await as('designer', laptop)
	await page.goto(`/studio/proposal/${cast.proposals.bookshop}`)
	await title(page).fill('Pale leaves, unsaved')
	await expect(status(page)).toHaveText('Not saved yet.')
	await expect(status(page)).toHaveText('Saved.')
	await page.getByRole('link', { name: 'Clients' }).click()
	await page.goBack()
	await expect(title(page)).toHaveValue('Pale leaves, unsaved')

	await title(page).fill('Pale leaves, in a hurry')
	const asked = page.waitForEvent('dialog')
	const left = page.reload()
	const dialog = await asked
	expect(dialog.type()).toBe('beforeunload')
	await dialog.accept()
	await left
})

test('before anything is published it is said to whom it goes, until when they may answer, and what is left', async ({
	as,
	cast,
}) => {
	const { bookshopApprover: leopold } = cast.people
	const page = await as('designer', laptop)
	await page.goto(`/studio/proposal/${cast.proposals.bookshop}`)
	await expect(page.getByRole('button', { name: 'Publish', exact: true })).toHaveCount(0)
	await page.getByRole('button', { name: 'Publish to the client' }).click()
	await expect(page.getByText(`Goes by mail to ${leopold.name} (may answer). Answer by `)).toContainText(/Margin \d/)
	await page.getByRole('button', { name: 'Publish to the client' }).click()
	await expect(page.getByRole('button', { name: 'Publish', exact: true })).toHaveCount(0)
})

test('what was typed survives a refusal, and a server that is out of reach', async ({ as, cast, wrong }) => {
	const page = await as('designer', laptop)
	await page.goto(`/studio/proposal/${cast.proposals.bookshop}`)
	const birches = page.getByRole('textbox', { name: 'Count, Bone and charcoal, Door planter, line 1' })
	await title(page).fill('Pale leaves, half typed')
	await birches.fill('a dozen')
	await save(page).click()
	await expect(status(page)).toHaveText('Not saved: something below cannot be kept as it is.')
	await expect(birches).toHaveValue('a dozen')
	await expect(birches).toHaveAccessibleDescription('Give a number such as 12 or 2.5.')
	await expect(title(page)).toHaveValue('Pale leaves, half typed')
	await expect(page.getByRole('button', { name: 'Publish to the client' })).toHaveCount(0)

	await birches.fill('13')
	await expect(page.getByRole('button', { name: 'Publish to the client' })).toBeVisible()
	await page.context().setOffline(true)
	const noPrice = page.waitForEvent('requestfailed', (request) => request.url().endsWith('/price'))
	await birches.fill('14')
	await noPrice
	await save(page).click()
	await expect(status(page)).toHaveText(
		'Not saved: the server is out of reach. What you typed is still here; try again.',
	)
	await page.context().setOffline(false)
	await expect(title(page)).toHaveValue('Pale leaves, half typed')
	await save(page).click()
	await expect(status(page)).toHaveText('Saved.')
	await expect(page.getByRole('region', { name: 'Price' })).toHaveAttribute('aria-busy', 'false')
	await page.reload()
	await expect(birches).toHaveValue('14')
	await expect(title(page)).toHaveValue('Pale leaves, half typed')
	expect(new Set(wrong.splice(0))).toEqual(
		new Set(['console: Failed to load resource: net::ERR_INTERNET_DISCONNECTED']),
	)
})

// React 19 empties a form's fields after its action, unless they are shown again with what was typed.
test('a form of the studio that goes wrong twice keeps what was typed', async ({ as }) => {
	const page = await as('designer', laptop)
	await page.goto('/studio/clients')
	await page.getByRole('link', { name: 'Add a client' }).click()
	const fields = [
		['Business or household', 'household', 'business'],
		['A business pays within', '15', '30'],
		['Tax-exempt certificate (if any)', 'EX-77-B', 'EX-77-C'],
		['Note for the studio', 'Ring twice.\nThe dog is deaf.', 'Ring once.'],
	] as const
	const [kind, days, certificate, note] = fields.map(([label]) => page.getByLabel(label))
	for (const attempt of [1, 2] as const) {
		await kind?.selectOption(fields[0][attempt])
		await days?.selectOption(fields[1][attempt])
		await certificate?.fill(fields[2][attempt])
		await note?.fill(fields[3][attempt])
		await page.getByRole('button', { name: 'Save' }).click()
		await expect(page.getByRole('link', { name: 'This cannot be left empty.' })).toBeVisible()
		for (const [label, ...typed] of fields) await expect(page.getByLabel(label)).toHaveValue(typed[attempt - 1] ?? '')
	}
})
