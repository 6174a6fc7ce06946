import { expect, laptop, phone, test } from '../../site/story'

test('a business gives its purchase-order number, finds it on the invoice, pays, and owes nothing', async ({
	as,
	cast,
	mailbox,
}) => {
	test.slow()
	const { id, name } = cast.clients.bakery
	const { address } = cast.people.bakeryApprover
	const client = await as('bakeryApprover', phone)
	await client.goto(`/proposal/${cast.proposals.bakery}`)
	await client.getByRole('button', { name: 'Approve this design' }).click()
	await client.getByLabel('Purchase-order number').fill('PO 4471')
	await client.getByRole('button', { name: 'Approve this design' }).click()
	await expect(client.getByRole('heading', { name: 'Approved. Thank you.' })).toBeVisible()

	const page = await as('designer', laptop)
	await page.goto(`/studio/proposal/${cast.proposals.bakery}`)
	await page.getByText('It is in').first().click()
	await page.getByRole('button', { name: 'It is in' }).click()
	await expect(page.getByText('Done.', { exact: true })).toBeVisible()
	await page.goto('/studio/money')
	await page.getByRole('button', { name: `Write and send what ${name} owes` }).click()
	await expect(page.getByRole('heading', { level: 1, name })).toBeVisible()
	await page.goto('/studio/money')
	const row = page.getByRole('region', { name: 'Every account' }).getByRole('row', { name })
	await expect(row).toContainText('$')

	// The first is that of the autumn before, approved without a number.
	await mailbox.next(address, /^Invoice \d{4}-0001: /)
	const mail = await mailbox.next(address, /^Invoice \d{4}-0002: /)
	const [, number = '', total = ''] = /^Invoice ([\d-]+): \$([\d,.]+), due/.exec(mail.subject) ?? []
	expect(mail.text).toMatch(/Purchase order:?\s+PO 4471/)
	await client.goto(`/invoice/${number}`)
	await expect(client.getByRole('definition').filter({ hasText: /^PO 4471$/ })).toBeVisible()
	await expect(client.getByRole('definition').filter({ hasText: /15 days after/ })).toBeVisible()
	await expect(client.getByText(`$${total} is open.`)).toBeVisible()

	const paying = page.locator('form').filter({ hasText: 'A payment came' })
	async function pay(invoice: string, amount: string, reference: string) {
		await page.goto(`/studio/money/${id}`)
		await paying.getByLabel('Amount').fill(amount.replaceAll(',', ''))
		await paying.getByLabel('How').selectOption('bank transfer')
		await paying.getByLabel('Reference').fill(reference)
		await paying.getByLabel('Invoice').selectOption(invoice)
		await paying.getByRole('button', { name: 'Write it down' }).click()
		await expect(page.getByRole('status')).toContainText('Written down.')
	}
	await pay(number, total, 'PO 4471, by their bank')
	await page.goto(`/studio/money/invoice/${number}`)
	await expect(page.getByText('Paid, thank you.')).toBeVisible()
	await expect(page.getByRole('definition').filter({ hasText: /^PO 4471$/ })).toBeVisible()
	const thanks = await mailbox.next(address, /^We received /)
	expect(thanks.subject).toBe(`We received $${total}, thank you`)
	expect(thanks.text).toMatch(/Reference:?\s+PO 4471, by their bank/)
	await client.reload()
	await expect(client.getByText('Paid, thank you.')).toBeVisible()

	const first = await mailbox.next(address, /^Invoice \d{4}-0001: /)
	const [, older = '', rest = ''] = /^Invoice ([\d-]+): \$([\d,.]+), due/.exec(first.subject) ?? []
	await pay(older, rest, 'Check 1187')
	await page.goto('/studio/money')
	await expect(page.getByRole('region', { name: 'Past their day' })).toContainText('Nobody is late.')
	await expect(row).not.toContainText('$')
	await client.goto(`/home/${id}/account`)
	await expect(client.getByText('Nothing to pay', { exact: true })).toBeVisible()
})
