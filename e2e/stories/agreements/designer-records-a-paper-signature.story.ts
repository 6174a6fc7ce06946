import { issuedTo } from '../../site/agreement'
import { expect, laptop, test } from '../../site/story'

const pixel = Buffer.from(
	'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAIAAACQd1PeAAAACXBIWXMAAAPoAAAD6AG1e1JrAAAADElEQVQImWNoaGgAAAMEAYEezv+mAAAAAElFTkSuQmCC',
	'base64',
)

test('a designer records a signature on paper, and it says that it was on paper', async ({ as, site }) => {
	test.slow()
	const id = await issuedTo(site, 'bakery')
	const page = await as('designer', { ...laptop, javaScriptEnabled: false })
	await page.goto(`/studio/agreements/${id}`)
	await page.getByText('They signed on paper').click()
	await page.getByLabel('Who signed').fill('Maud Marrowby')
	await page.getByRole('button', { name: 'Keep the paper signature' }).click()
	await expect(page.getByRole('alert')).toContainText('could not be read as a photo')
	await expect(page.getByLabel('Who signed')).toHaveValue('Maud Marrowby')

	await page
		.getByLabel('A picture of the signed page')
		.setInputFiles({ name: 'page.png', mimeType: 'image/png', buffer: pixel })
	await page.getByRole('button', { name: 'Keep the paper signature' }).click()
	await expect(page.getByText('The paper signature is kept.')).toBeVisible()
	const signed = page.getByRole('region', { name: 'Signed and opened' })
	await expect(signed).toContainText('Maud Marrowby, on paper')
	await expect(signed.getByRole('link', { name: 'the picture of it' })).toBeVisible()
})
