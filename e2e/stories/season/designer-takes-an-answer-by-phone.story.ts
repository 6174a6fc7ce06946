import { mailsToSend } from '../../site/record'
import { groupOn, rowOf } from '../../site/season'
import { expect, laptop, phone, test } from '../../site/story'

test('a designer takes a yes down on the phone, and it is nowhere the client’s own', async ({ as, cast, mailbox }) => {
	const { bakeryApprover: odile, bakeryViewer: viewer, designer: isolde } = cast.people
	const { name } = cast.clients.bakery
	const page = await as('designer', laptop)
	await page.goto('/studio')
	await rowOf(groupOn(page, 'Waiting for them'), name)
		.getByRole('link', { name: `By phone for ${name}` })
		.click()
	await expect(page.getByRole('heading', { name: 'An answer by phone' })).toBeVisible()
	const yes = page.getByRole('region', { name: 'They approve' })
	const taken = yes.getByRole('paragraph').filter({ hasText: /^Copper and plum/ })
	const before = String(await taken.textContent())
	await yes.getByRole('checkbox', { name: /Lights/i }).check()
	await yes.getByRole('button', { name: 'Work out the total' }).click()
	await expect(taken).toContainText('with Two strings of warm lights')
	const total = (text: string | null) => /\$[\d,.]+/.exec(String(text))?.[0]
	expect(total(await taken.textContent())).not.toBe(total(before))

	await yes.getByRole('button', { name: 'Write down the approval' }).click()
	await expect(page.getByRole('link', { name: /This cannot be left empty\./ })).toBeVisible()
	await yes.getByLabel('Who said so').fill(odile.name)
	await yes.getByLabel('Purchase-order number (optional)').fill('B-91')
	await yes.getByRole('button', { name: 'Write down the approval' }).click()
	await expect(page.getByText('Written down, and marked as taken by phone.')).toBeVisible()
	const answer = page.getByRole('region', { name: 'Their answer' })
	await expect(answer).toContainText(`${odile.name} approved Copper and plum, by phone, taken down by ${isolde.name}`)
	await expect(answer).toContainText('purchase order B-91')

	await page.goto('/studio')
	await expect(rowOf(groupOn(page, 'Settled'), name)).toContainText('by phone')

	const receipt = await mailbox.next(odile.address, /^Approved by phone/)
	expect(receipt.text).toContain(`${isolde.name} wrote down, as ${odile.name} said on the phone`)
	expect(receipt.text).toContain('Is any of it wrong?')
	await mailbox.next(viewer.address, /^Approved by phone/)

	const client = await as('bakeryApprover', phone)
	await client.goto(`/proposal/${cast.proposals.bakery}`)
	await expect(client.getByText(`by phone, as ${odile.name} said, taken down by ${isolde.name}`)).toBeVisible()
})

test('a wish and a skip by phone come with a receipt as well', async ({ as, cast, mailbox, site }) => {
	const page = await as('designer', laptop)
	await page.goto(`/studio/proposal/${cast.proposals.dental}/phone`)
	const change = page.getByRole('region', { name: 'They ask for a change' })
	await change.getByLabel('Who said so').fill('The front desk')
	await change.getByLabel('The whole design').fill('Lower at the door.')
	await change.getByRole('button', { name: 'Write down the change' }).click()
	await expect(page.getByRole('region', { name: 'Their answer' })).toContainText('Lower at the door.')
	const wish = await mailbox.next(cast.people.dentalApprover.address, /^A change asked for by phone/)
	expect(wish.text).toContain('Lower at the door.')

	await page.goto(`/studio/proposal/${cast.proposals.stucco}/phone`)
	const skip = page.getByRole('region', { name: /^They skip/ })
	await skip.getByLabel('Who said so').fill('Caspar')
	await skip.getByRole('button', { name: 'Write down that they skip' }).click()
	await expect(page.getByText('Written down, and marked as taken by phone.')).toBeVisible()
	await mailbox.next(cast.people.stuccoApprover.address, /^Skipped by phone/)
	await expect.poll(() => mailsToSend(site)).toBe(0)
	expect(mailbox.mails.filter(({ to }) => to === cast.people.designer.address)).toEqual([])
})
