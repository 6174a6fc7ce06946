import { groupOn, rowOf } from '../../site/season'
import { expect, laptop, test } from '../../site/story'

test('a designer publishes all that are ready, and reminds all that wait', async ({ as, cast, mailbox }) => {
	const { bicycles, inn } = cast.clients
	const page = await as('designer', laptop)
	await page.goto('/studio')
	await page.getByRole('link', { name: 'Publish all that are ready' }).click()
	const ready = page.getByRole('checkbox', { name: /^Publish / })
	await expect(page.getByRole('checkbox', { name: `Publish ${bicycles.name}` })).toBeChecked()
	const count = await ready.count()
	const notReady = page.getByRole('region', { name: /^Not ready/ })
	await expect(notReady).toContainText(inn.name)
	await expect(notReady).toContainText('The change that was asked for is not in the draft yet.')
	await page.getByRole('button', { name: 'Publish what is ticked' }).click()
	const came = page.getByRole('region', { name: /published$/ })
	await expect(came).toContainText(bicycles.name)
	await expect(ready).toHaveCount(0)
	await mailbox.next(cast.people.bicyclesApprover.address, /^Your design for winter/)

	await page.getByRole('link', { name: /^Back to winter/ }).click()
	const them = groupOn(page, 'Waiting for them')
	await expect(them.getByRole('row')).toHaveCount(6 + count + 1)
	await expect(rowOf(them, bicycles.name)).toBeVisible()

	await page.getByRole('button', { name: 'Remind all that wait' }).click()
	await expect(page.getByText(/clients were reminded\. One client was not, since/)).toBeVisible()
	await mailbox.next(cast.people.bicyclesApprover.address, /^We still need your answer/)
	await page.getByRole('checkbox', { name: /reminded in the last two days: remind them again too/ }).check()
	await page.getByRole('button', { name: 'Remind all that wait' }).click()
	await expect(page.getByText(/clients were reminded\.$/)).toBeVisible()
	await mailbox.next(cast.people.bicyclesApprover.address, /^We still need your answer/, 1)
})

test('without scripts one form does all of it, and what is shown is asked for in the address', async ({
	browse,
	cast,
	site,
	as,
}) => {
	const { cookies } = await (await as('designer', laptop)).context().storageState()
	const page = await browse(site.url, { ...laptop, javaScriptEnabled: false })
	await page.context().addCookies(cookies)
	await page.goto(`/studio/season/${cast.seasons.winter}/publish?only=${cast.proposals.bicycles}`)
	await expect(page.getByRole('checkbox', { name: /^Publish /, checked: true })).toHaveCount(1)
	await page.getByRole('button', { name: 'Publish what is ticked' }).click()
	await expect(page.getByRole('heading', { name: 'One published' })).toBeVisible()

	await page.getByRole('link', { name: /^Back to winter/ }).click()
	await page.getByText('Show some of them, or in another order').click()
	await page.getByLabel('Show', { exact: true }).selectOption('Waiting for them')
	await page.getByLabel('Client’s name holds').fill('bakery')
	await page.getByRole('button', { name: 'Show', exact: true }).click()
	await expect(page).toHaveURL(/show=waiting\+for\+them/)
	await expect(page.getByText(/^Shown: 1 of /)).toBeVisible()
	await expect(rowOf(page, cast.clients.bakery.name)).toBeVisible()
	await expect(rowOf(page, cast.clients.vet.name)).toHaveCount(0)
	await page.getByRole('link', { name: 'Show everybody' }).click()
	await expect(rowOf(page, cast.clients.vet.name)).toBeVisible()
})
