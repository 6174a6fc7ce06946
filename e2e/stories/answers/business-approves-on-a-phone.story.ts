import { bare, pagesOf } from '../../../tests/app/pdf/text'
import { linkIn } from '../../site/mailbox'
import { expect, laptop, phone, test } from '../../site/story'

test('a business client approves the winter design on a phone, from the mailed link to the receipt', async ({
	visit,
	as,
	mailbox,
	cast,
}) => {
	const { bakeryApprover } = cast.people
	const invitation = await mailbox.next(bakeryApprover.address, /design for winter/)
	expect(Buffer.byteLength(invitation.html)).toBeLessThan(30_000)

	const page = await visit(phone)
	await page.goto(linkIn(invitation))
	await expect(page.getByRole('heading', { name: 'Open your door' })).toBeVisible()
	await page.getByRole('button', { name: 'Send me the link' }).click()
	const link = await mailbox.next(bakeryApprover.address, /link to sign in/)
	await page.goto(linkIn(link))
	await page.getByRole('button', { name: 'Sign in' }).click()

	await expect(page.getByRole('heading', { level: 1, name: 'Copper at the bakery door' })).toBeVisible()
	await page.getByRole('checkbox', { name: /Two strings of warm lights/ }).check()
	await expect(page.getByRole('row', { name: /Two strings of warm lights/ })).toBeVisible()
	const total = String(
		await page
			.getByRole('row', { name: /^Total/ })
			.getByRole('cell')
			.textContent(),
	)
	await page.getByRole('button', { name: 'Approve this design' }).click()

	await expect(page.getByRole('heading', { name: 'Check before you approve' })).toBeVisible()
	await expect(page.getByText('Two strings of warm lights')).toBeVisible()
	await expect(page.getByText(total, { exact: true })).toBeVisible()
	await page.getByLabel('Purchase-order number').fill('PO 4471')
	await page.getByRole('button', { name: 'Approve this design' }).click()

	await expect(page.getByRole('heading', { name: 'Approved. Thank you.' })).toBeVisible()
	const reference = String(await page.getByRole('definition').nth(0).textContent())
	expect(reference).toMatch(/^\d{4}-\d{4}$/)
	await expect(page.getByText('PO 4471', { exact: true })).toBeVisible()
	await expect(page.getByText(total, { exact: true })).toHaveCount(1)
	const pdf = String(await page.getByRole('link', { name: 'Take it as a PDF' }).getAttribute('href'))
	const file = await page.request.get(pdf)
	expect(file.headers()['content-disposition']).toContain(`design-${reference}.pdf`)
	const words = bare((await pagesOf(await file.body())).join(''))
	for (const line of [reference, `Total ${total}`, 'PO 4471', bakeryApprover.name, 'Two strings of warm lights'])
		expect(words).toContain(bare(line))
	const receipt = await mailbox.next(bakeryApprover.address, /^Approved/)
	const record = [reference, total, 'PO 4471', bakeryApprover.name, cast.clients.bakery.name, 'Sales tax, 6.25 %']
	for (const line of record) expect(receipt.text).toContain(line)
	const copy = await mailbox.next(cast.people.bakeryViewer.address, /^Approved/)
	expect(copy.text).toContain(`${bakeryApprover.name} approved this design. This is your copy of the receipt.`)
	const notice = await mailbox.next(cast.people.designer.address, /Marrowby Bakery approved/)
	expect(notice.text).toContain(total)
	expect(notice.text).toContain('Sent to you because you design for')
	await page.getByRole('link', { name: 'Back to the design' }).click()
	await expect(page.getByText(/^Approved on .* purchase order PO 4471\.$/)).toBeVisible()

	const studio = await as('designer', laptop)
	await studio.goto(`/studio/proposal/${cast.proposals.bakery}`)
	await studio.getByText('Open it again', { exact: true }).first().click()
	await studio.getByRole('button', { name: 'Open it again' }).click()
	const reason = studio.getByRole('textbox', { name: 'Reason, kept in the record' })
	await expect(reason).toHaveAccessibleDescription('Say why: the reason is kept in the record.')
	await expect(studio.getByRole('link', { name: 'Say why: the reason is kept in the record.' })).toBeVisible()
	await reason.fill('The copper pot cracked in the first frost.')
	await studio.getByRole('button', { name: 'Open it again' }).click()
	await expect(studio.getByText('Done.')).toBeVisible()

	expect((await page.request.get(pdf)).url()).toMatch(new RegExp(`/proposal/${cast.proposals.bakery}$`))
	await page.goto(`/proposal/${cast.proposals.bakery}/done`)
	await expect(page).toHaveURL(`/proposal/${cast.proposals.bakery}`)
	await expect(page.getByText(/^We are revising this design\. A new revision will follow/)).toBeVisible()
	await expect(page.getByText('Approved. Thank you.')).toHaveCount(0)
})
