import { expect, laptop, test } from '../../site/story'

test('a designer begins an agreement, is told what is open, prices a season, issues it and reminds', async ({
	as,
	cast,
	mailbox,
}) => {
	test.slow()
	const page = await as('designer', { ...laptop, javaScriptEnabled: false })
	await page.goto(`/studio/clients/${cast.clients.vet.id}`)
	await page.getByRole('button', { name: 'Begin an agreement' }).click()
	await expect(page.getByRole('heading', { level: 1, name: cast.clients.vet.name })).toBeVisible()
	const open = page.getByRole('region', { name: 'Before it can be issued' })
	await expect(open.getByRole('link', { name: /leaves \{law\} open/ })).toHaveAttribute('href', '#law')

	const first = page.getByRole('group', { name: /^Winter/ })
	await first.getByLabel('Price', { exact: true }).selectOption('a fixed price')
	await first.getByLabel('Fixed at').fill('612.50')
	await page.getByLabel('The fixed prices are paid').selectOption('quarterly')
	await page.getByLabel('The first falls due').selectOption('when they sign')
	await page.getByLabel('Who waters', { exact: true }).selectOption('the client')
	await page.getByLabel('Lights are taken down by').fill('2031-02-15')
	await page.getByLabel('It follows the law of').fill('the State of Westmere')
	await page.getByRole('button', { name: 'Save the terms' }).click()
	await expect(page.getByText('Saved.')).toBeVisible()
	await expect(open).toHaveCount(0)

	await page.getByRole('button', { name: 'Issue this agreement' }).click()
	await expect(page.getByText('Issued, with a mail on its way to who may sign.')).toBeVisible()
	await expect(page.getByText('$612.50 fixed in all')).toBeVisible()
	await mailbox.next(cast.people.vetApprover.address, /agreement/i)

	await page.getByRole('link', { name: 'All agreements' }).click()
	const row = page.getByRole('row').filter({ hasText: cast.clients.vet.name })
	await expect(row).toContainText('To be signed')
	await row.getByRole('button', { name: /^Remind/ }).click()
	await expect(row.getByText('Reminded', { exact: true })).toBeVisible()
	await page.getByRole('link', { name: cast.clients.vet.name }).click()
	await page.getByRole('button', { name: /^Remind/ }).click()
	await expect(page.getByRole('alert')).toContainText('already')
})
