import { rowOf } from '../../site/season'
import { expect, laptop, phone, test } from '../../site/story'

test('a designer cancels a yes with what remains due, never more than was approved, and the client hears of it', async ({
	as,
	cast,
	mailbox,
}) => {
	const page = await as('designer', laptop)
	await page.goto('/studio')
	await rowOf(page, cast.clients.approved.name).getByRole('link', { name: cast.clients.approved.name }).click()
	await page.getByText('Cancel it').first().click()
	const reason = page.getByRole('textbox', { name: 'Reason' })
	const remains = page.getByRole('textbox', { name: 'What remains due' })
	await reason.fill('They move out in January.')
	await remains.fill('90000')
	await page.getByRole('button', { name: 'Cancel it' }).click()
	await expect(page.getByText('More cannot remain due than was approved.').first()).toBeVisible()
	await expect(reason).toHaveValue('They move out in January.')
	await expect(remains).toHaveValue('90000')

	await remains.fill('120.50')
	await page.getByRole('button', { name: 'Cancel it' }).click()
	await expect(page.getByText('Done.', { exact: true })).toBeVisible()

	const mail = await mailbox.next(cast.people.approvedApprover.address, /cancelled/i)
	expect(mail.text).toContain('$120.50')
	expect(mail.text).not.toContain('move out')
	const client = await as('approvedApprover', phone)
	await client.goto('/')
	await expect(client.getByText('Cancelled')).toBeVisible()
})
