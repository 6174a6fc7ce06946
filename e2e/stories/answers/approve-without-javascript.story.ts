import { codeIn } from '../../site/mailbox'
import { expect, phone, test } from '../../site/story'

const tooLong = 'Warmer, please. '.repeat(63)

test('a homeowner signs in by code, chooses and approves in a browser without JavaScript', async ({
	visit,
	cast,
	mailbox,
}) => {
	const { clapboardApprover: nell } = cast.people
	const page = await visit({ ...phone, javaScriptEnabled: false })
	await page.goto('/')
	await page.getByLabel('Mail address').fill('nell at tavendry.example')
	await page.getByRole('button', { name: 'Send me the link' }).click()
	await expect(page.getByRole('alert')).toContainText('Give a mail address such as name@example.com.')
	await expect(page.getByLabel('Mail address')).toHaveValue('nell at tavendry.example')
	await page.getByLabel('Mail address').fill(nell.address)
	await page.getByRole('button', { name: 'Send me the link' }).click()
	const mail = await mailbox.next(nell.address, /link to sign in/)
	await page.getByLabel('Code from the mail').fill(codeIn(mail))
	await page.getByRole('button', { name: 'Sign in' }).click()
	await page.getByRole('link', { name: 'Look and answer' }).click()

	await page.getByRole('link', { name: 'Choose a palette' }).click()
	await page.getByRole('link', { name: /^Put it on the wall\s*: Bone and charcoal$/ }).click()
	const total = page.getByRole('row', { name: /^Total/ }).getByRole('cell')
	const before = String(await total.textContent())
	await page.getByRole('checkbox', { name: /Two strings of warm lights/ }).check()
	await page.getByRole('button', { name: 'Update the total' }).click()
	await expect(page.getByRole('row', { name: /Two strings of warm lights/ })).toBeVisible()
	await expect(total).not.toHaveText(before)
	const after = String(await total.textContent())
	await expect(page.getByRole('checkbox', { name: /Two strings of warm lights/ })).toBeChecked()

	await page.getByRole('link', { name: 'Ask for a change' }).click()
	await page.getByLabel('The whole design').fill('A little lower, please.')
	await page.getByLabel('Extra “Two strings of warm lights”').fill(tooLong)
	await page.getByRole('button', { name: 'Ask for this change' }).click()
	await expect(page.getByRole('link', { name: 'Extra “Two strings of warm lights”: keep this to 1000' })).toBeVisible()
	const box = page.getByLabel('Extra “Two strings of warm lights”')
	await expect(box).toHaveValue(tooLong)
	await expect(box).toHaveAccessibleDescription('Keep this to 1000 characters.')
	await expect(page.getByLabel('The whole design')).toHaveValue('A little lower, please.')
	await page.getByRole('link', { name: 'Back to the design' }).click()
	await expect(total).toHaveText(after)
	await expect(page.getByRole('checkbox', { name: /Two strings of warm lights/ })).toBeChecked()

	await page.getByRole('button', { name: 'Approve this design' }).click()
	await expect(page.getByText('Bone and charcoal', { exact: true })).toBeVisible()
	await expect(page.getByText('Two strings of warm lights', { exact: true })).toBeVisible()
	await expect(page.getByText('Purchase-order number')).toHaveCount(0)
	await expect(page.getByText('Left out')).toHaveCount(0)
	await page.getByRole('button', { name: 'Approve this design' }).click()

	await expect(page.getByRole('heading', { name: 'Approved. Thank you.' })).toBeVisible()
	const receipt = await mailbox.next(nell.address, /^Approved/)
	expect(receipt.text).toContain(after)
	await page.reload()
	await expect(page.getByRole('heading', { name: 'Approved. Thank you.' })).toBeVisible()
})
