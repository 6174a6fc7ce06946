import { amended, issuedTo } from '../../site/agreement'
import { expect, phone, test } from '../../site/story'

test('a client who reads while the text is changed signs nothing, sees what is different, and signs that', async ({
	site,
	as,
}) => {
	test.slow()
	const id = await issuedTo(site, 'vet')
	const page = await as('vetApprover', { ...phone, javaScriptEnabled: false })
	const agree = async () => {
		await page.goto(`/agreement/${id}`)
		await page.getByRole('link', { name: 'Go on to sign' }).first().click()
		await page.getByRole('checkbox', { name: /^I agree to have these records on a screen/ }).check()
		await page.getByRole('button', { name: 'Agree and go on' }).click()
		await page.getByLabel('Your name').fill('Rowan Kittiwell')
	}
	await agree()
	await amended(site, 'vet', id)
	await page.getByRole('button', { name: 'Sign the agreement' }).click()

	await expect(page.getByRole('alert')).toContainText('The agreement was changed while you were reading.')
	const different = page.getByRole('region', { name: 'What is different' })
	await expect(different).toContainText('the State of Westmere')
	await expect(different).toContainText('the Commonwealth of Ostmark')
	await expect(page.getByRole('region', { name: 'Signatures' })).toContainText('not signed yet')

	await agree()
	await page.getByRole('button', { name: 'Sign the agreement' }).click()
	await expect(page.getByRole('heading', { level: 1, name: 'Signed. Thank you.' })).toBeVisible()
})
