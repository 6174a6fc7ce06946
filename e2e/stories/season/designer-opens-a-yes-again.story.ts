import { rowOf } from '../../site/season'
import { expect, laptop, phone, test } from '../../site/story'

test('a designer opens a yes again, and the client hears of it by mail and at their door', async ({
	as,
	cast,
	mailbox,
}) => {
	const { approvedApprover: edda } = cast.people
	const client = await as('approvedApprover', phone)
	await client.goto('/')
	await expect(client.getByText(/^Next: Bone and charcoal goes in /)).toBeVisible()

	const page = await as('designer', laptop)
	await page.goto('/studio')
	await rowOf(page, cast.clients.approved.name).getByRole('link', { name: cast.clients.approved.name }).click()
	await page.getByText('Open it again').first().click()
	await page.getByRole('textbox', { name: 'Reason' }).fill('The second pot cracked in the frost.')
	await page.getByRole('button', { name: 'Open it again' }).click()
	await expect(page.getByText('Done.', { exact: true })).toBeVisible()

	const mail = await mailbox.next(edda.address, /^We are revising your design for winter/)
	expect(mail.text).toContain('Your approval, reference ')
	expect(mail.text).not.toContain('cracked')
	await client.reload()
	await expect(client.getByText('We are revising this')).toBeVisible()
	await expect(client.getByText(/^Next: /)).toHaveCount(0)
	await expect(client.getByRole('main')).not.toContainText(/Drafting/i)
})
