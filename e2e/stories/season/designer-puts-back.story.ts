import type { Locator, Page } from '@playwright/test'
import { groupOn, rowOf } from '../../site/season'
import { expect, laptop, phone, test } from '../../site/story'

const status = (page: Page) => page.getByRole('region', { name: 'Save and publish' }).getByRole('status')
const stops = (page: Page) => page.getByRole('region', { name: 'Save and publish' }).getByRole('list').getByRole('link')

/** Goes on with the Tab key alone until something has the focus. */
const tabTo = (page: Page, to: Locator, key: 'Tab' | 'Shift+Tab' = 'Tab') =>
	expect(async () => {
		await page.keyboard.press(key)
		await expect(to).toBeFocused({ timeout: 20 })
	}).toPass({ intervals: [0], timeout: 60_000 })

test('a designer adds a palette, removes it, puts it back and publishes, by keyboard alone', async ({ as, cast }) => {
	const page = await as('designer', laptop)
	await page.goto('/studio')
	await tabTo(
		page,
		rowOf(groupOn(page, 'Waiting for us'), cast.clients.bookshop.name).getByRole('link', { name: /^Finish/ }),
	)
	await page.keyboard.press('Enter')
	const ready = page.getByRole('heading', { name: 'Ready to be published' })
	await expect(ready).toBeVisible()

	await tabTo(page, page.getByRole('button', { name: 'Add a palette' }), 'Shift+Tab')
	await page.keyboard.press('Enter')
	const name = page.getByRole('textbox', { name: 'Palette 2, its name' })
	await expect(name).toBeFocused()
	await page.keyboard.type('Second thoughts')
	await tabTo(page, page.getByRole('button', { name: 'Remove Second thoughts' }))
	await page.keyboard.press('Enter')
	await expect(page.getByRole('status').getByText('“Second thoughts” was removed.')).toBeAttached()
	await expect(page.getByRole('button', { name: 'Put back “Second thoughts”' })).toBeFocused()
	await page.keyboard.press('Enter')
	await expect(name).toBeFocused()
	await expect(name).toHaveValue('Second thoughts')

	const noColours = stops(page).filter({ hasText: '“Second thoughts” has no colours yet.' })
	await expect(noColours).toBeVisible()
	await tabTo(page, noColours)
	await page.keyboard.press('Enter')
	const second = page.getByRole('group', { name: 'Palette 2' })
	await expect(second.getByRole('button', { name: 'Add a colour' })).toBeFocused()
	await page.keyboard.press('Enter')
	await expect(second.getByLabel('Colour 1', { exact: true })).toBeFocused()
	await tabTo(page, second.getByRole('button', { name: 'Remove colour 1' }))
	await page.keyboard.press('Enter')
	await expect(page.getByRole('button', { name: 'Put back the colour' })).toBeFocused()
	await tabTo(page, page.getByRole('button', { name: 'Remove Second thoughts' }), 'Shift+Tab')
	await page.keyboard.press('Enter')

	await expect(ready).toBeVisible()
	await tabTo(page, page.getByRole('button', { name: 'Publish to the client' }))
	await page.keyboard.press('Enter')
	await tabTo(page, page.getByRole('button', { name: 'Publish', exact: true }))
	await page.keyboard.press('Enter')
	await expect(page.getByText('Published. The client’s contacts hear of it by mail.')).toBeVisible()
})

test('what was removed comes back as it was, beside what was changed meanwhile', async ({ as, cast }) => {
	const page = await as('designer', laptop)
	await page.goto(`/studio/proposal/${cast.proposals.bookshop}`)
	const line = (what: string, n: number) => page.getByLabel(`${what}, Bone and charcoal, Door planter, line ${n}`)
	const materials = await line('Material', 3).locator('option:checked').textContent()
	await line('Count', 3).fill('7.125')
	await line('Whose it is', 3).selectOption('own')
	await page.getByRole('button', { name: /^Remove .*, Bone and charcoal, Door planter, line 3$/ }).click()
	const back = page.getByRole('button', { name: /^Put back/ })
	await expect(back).toBeFocused()
	await expect(line('Count', 3)).not.toHaveValue('7.125')
	await line('Count', 1).fill('15')
	await page.getByLabel('Title').fill('Pale leaves, once more')
	await back.click()
	await expect(line('Material', 3)).toBeFocused()
	await expect(line('Material', 3).locator('option:checked')).toHaveText(String(materials))
	await expect(line('Count', 3)).toHaveValue('7.125')
	await expect(line('Whose it is', 3)).toHaveValue('own')
	await expect(line('Count', 1)).toHaveValue('15')
	await expect(back).toHaveCount(0)

	await page.getByLabel('Put a recipe into Bone and charcoal').selectOption({ index: 1 })
	await expect(page.getByText('Something else is in the containers now.').first()).toBeVisible()
	await back.click()
	await expect(line('Count', 3)).toHaveValue('7.125')
	await page.getByRole('button', { name: 'Save the draft' }).click()
	await expect(status(page)).toHaveText('Saved.')
	await page.reload()
	await expect(line('Count', 3)).toHaveValue('7.125')
	await expect(page.getByLabel('Title')).toHaveValue('Pale leaves, once more')
})

test('a container that was taken out keeps what was said of it', async ({ as, cast }) => {
	const page = await as('designer', phone)
	await page.goto(`/studio/proposal/${cast.proposals.bookshop}`)
	const row = page.getByRole('group', { name: 'Containers' })
	const box = row.getByRole('checkbox', { name: 'Window box' })
	await row.getByRole('checkbox', { name: 'may be left out' }).nth(1).check()
	await box.uncheck()
	await expect(row.getByRole('checkbox', { name: 'may be left out' })).toHaveCount(1)
	await page.getByRole('button', { name: 'Put back Window box' }).click()
	await expect(box).toBeChecked()
	await expect(box).toBeFocused()
	await expect(row.getByRole('checkbox', { name: 'may be left out' }).nth(1)).toBeChecked()
})

test('putting back hides nothing of what was saved in another window', async ({ as, cast }) => {
	const desk = `/studio/proposal/${cast.proposals.bookshop}`
	const here = await as('designer', laptop)
	const there = await here.context().newPage()
	await here.goto(desk)
	await there.goto(desk)
	await there.getByLabel('Title').fill('Pale leaves, from the other window')
	await there.getByRole('button', { name: 'Save the draft' }).click()
	await expect(status(there)).toHaveText('Saved.')

	await here.getByRole('button', { name: 'Remove colour 1' }).click()
	await here.getByRole('button', { name: 'Save the draft' }).click()
	const both = here.getByRole('main').getByRole('alert')
	await expect(both).toBeVisible()
	await here.getByRole('button', { name: /^Put back/ }).click()
	await expect(both.getByRole('row')).toHaveCount(2)
	await expect(both.getByRole('row').nth(1).getByRole('cell').nth(1)).toHaveText('Pale leaves, from the other window')
	await here.getByRole('button', { name: 'Remove colour 2' }).click()
	await both.getByRole('button', { name: 'Take what is there' }).click()
	await expect(here.getByLabel('Title')).toHaveValue('Pale leaves, from the other window')
	await expect(here.getByLabel('Title')).toBeFocused()
	await expect(here.getByRole('button', { name: /^Put back/ })).toHaveCount(0)
})

test('a check that is let stand, looked at again and let stand once more keeps its note', async ({ as, cast }) => {
	const page = await as('designer', laptop)
	await page.goto(`/studio/proposal/${cast.proposals.bookshop}`)
	const finding = /^The soil is .* too little to hold white birch/
	const item = page.getByRole('listitem').filter({ hasText: finding })
	await item.getByText('Let it stand').click()
	await item.getByLabel('Why it may stand').fill('A frame is in the box.')
	await item.getByRole('button', { name: 'Keep the note' }).press('Enter')
	const again = page.getByRole('button', { name: /^Look at it again ?: The soil/ })
	await expect(again).toBeFocused()
	await again.press('Enter')
	await expect(page.getByRole('button', { name: 'Put back the note' })).toBeFocused()
	await expect(again).toHaveCount(0)
	await page.keyboard.press('Enter')
	await expect(again).toBeVisible()
	await expect(page.getByText('Let stand: A frame is in the box.')).toBeVisible()
})

test('what stops publishing follows the draft, leads to each box, and stands there before scripts arrive', async ({
	as,
	cast,
}) => {
	const quiet = await as('designer', { ...laptop, javaScriptEnabled: false })
	await quiet.goto(`/studio/proposal/${cast.proposals.unpriced}`)
	const empty = [
		'“Blue spruce alone”: nothing is in Veranda pot yet.',
		'“Blue spruce alone”: nothing is in Veranda trough yet.',
	]
	await expect(stops(quiet)).toHaveText(empty)
	await quiet.goto(`/studio/proposal/${cast.proposals.bookshop}`)
	await expect(quiet.getByRole('heading', { name: 'Ready to be published' })).toBeVisible()
	await expect(quiet.getByText(`It will go to ${cast.people.bookshopApprover.name}.`)).toBeVisible()

	const page = await as('designer', phone)
	await page.goto(`/studio/proposal/${cast.proposals.unpriced}`)
	await expect(stops(page)).toHaveText(empty)
	await page.getByRole('link', { name: 'Save and publish 2 things stop publishing.' }).click()
	await page.getByLabel('Title').fill('')
	await expect(stops(page)).toHaveText(['Give the proposal a title.', ...empty])
	await stops(page).first().click()
	await expect(page.getByLabel('Title')).toBeFocused()
	await page.keyboard.type('Lilac boards')
	await expect(stops(page)).toHaveText(empty)
	await stops(page).nth(1).click()
	await expect(page.getByRole('button', { name: 'Add a line to Blue spruce alone, Veranda trough' })).toBeFocused()
	await page.getByRole('button', { name: 'Add an extra' }).click()
	await page.getByLabel('Minutes').fill('a while')
	await expect(stops(page)).toHaveText(['Extra 1, minutes: give a number such as 12 or 2.5.'])
	await stops(page).first().click()
	await expect(page.getByLabel('Minutes')).toBeFocused()
})
