import { issuedTo } from '../../site/agreement'
import { linkIn } from '../../site/mailbox'
import { expect, phone, test } from '../../site/story'

test('a client signs the yearly agreement on a phone, from the mail to the signed file', async ({
	site,
	cast,
	mailbox,
	visit,
}) => {
	test.slow()
	const { address } = cast.people.vetApprover
	await issuedTo(site, 'vet')
	const page = await visit(phone)
	// What waited before goes out first.
	await mailbox.next(cast.people.bakeryViewer.address, /^Your design for /)
	const mail = await mailbox.next(address, /^Your agreement for /)
	expect(mail.text).toContain('Dr. Rowan Kittiwell')

	await page.goto(linkIn(mail))
	await page.getByRole('button', { name: 'Send me the link' }).click()
	await page.goto(linkIn(await mailbox.next(address, /^Your link to sign in$/)))
	await page.getByRole('button', { name: 'Sign in' }).click()

	await expect(page.getByRole('heading', { level: 1, name: 'Our agreement' })).toBeVisible()
	await expect(page.getByText('It waits for your signature until')).toBeVisible()
	await page.getByRole('link', { name: 'Go on to sign' }).first().click()

	const box = page.getByRole('checkbox', { name: /^I agree to have these records on a screen/ })
	await expect(box).not.toBeChecked()
	await page.getByRole('button', { name: 'Agree and go on' }).click()
	await expect(page.getByRole('alert', { name: 'One thing needs another look' })).toContainText(
		'tick the box if you agree',
	)
	await box.check()
	await page.getByRole('button', { name: 'Agree and go on' }).click()

	await expect(page.getByRole('heading', { level: 1, name: 'Sign the agreement' })).toBeVisible()
	await page.getByRole('button', { name: 'Sign the agreement' }).click()
	await expect(page.getByRole('alert', { name: 'One thing needs another look' })).toContainText(
		'Your name: this cannot be left empty.',
	)
	await page.getByLabel('Your name').fill('Rowan Kittiwell')
	await page.getByText('Draw it as well, if you like').click()
	const field = page.getByRole('img', { name: 'A field to draw your signature in' })
	await field.click({ position: { x: 40, y: 40 } })
	await page.getByRole('button', { name: 'Sign the agreement' }).click()

	await expect(page.getByRole('heading', { level: 1, name: 'Signed. Thank you.' })).toBeVisible()
	await expect(page.getByText('Rowan Kittiwell,').first()).toBeVisible()
	await page.reload()
	await expect(page.getByRole('heading', { level: 1, name: 'Signed. Thank you.' })).toBeVisible()

	const receipt = await mailbox.next(address, /^Signed: your agreement for /)
	expect(receipt.text).toMatch(/Text \(SHA-256\):\s+[0-9a-f]{64}/)
	expect(receipt.text).toMatch(/Record, line \d+:\s+[0-9a-f]{64}/)
	expect((await mailbox.next(cast.people.designer.address, /^Kittiwell Veterinary Clinic signed$/)).text).toContain(
		'Rowan Kittiwell signed',
	)

	const path = new URL(page.url()).pathname.replace(/\/done$/, '/pdf')
	await expect
		.poll(async () => (await page.request.get(path)).headers()['content-disposition'], { timeout: 30_000 })
		.toContain('agreement-signed.pdf')
	const [first, second] = [await page.request.get(path), await page.request.get(path)]
	expect((await first.body()).subarray(0, 5).toString()).toBe('%PDF-')
	expect((await second.body()).equals(await first.body())).toBe(true)

	await page.goto('/verify')
	const file = { name: 'agreement-signed.pdf', mimeType: 'application/pdf', buffer: await first.body() }
	await page.getByLabel('The file').setInputFiles(file)
	await expect(page.getByRole('status')).toContainText('The hash of agreement-signed.pdf stands below.')
	await page.getByRole('button', { name: 'Compare' }).click()
	await expect(page.getByRole('heading', { name: 'The record knows this file' })).toBeVisible()
	file.buffer[2000] = (file.buffer[2000] ?? 0) ^ 1
	await page.getByLabel('The file').setInputFiles(file)
	await expect(page.getByText('The hash of agreement-signed.pdf stands below.')).toBeVisible()
	await page.getByRole('button', { name: 'Compare' }).click()
	await expect(page.getByRole('heading', { name: 'The record does not know this file' })).toBeVisible()

	await page.goto(`/home/${cast.clients.vet.id}`)
	await expect(page.getByRole('region', { name: 'Agreements' })).toContainText('Signed')
})
