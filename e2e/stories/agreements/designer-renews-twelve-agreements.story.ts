import { issuedTo } from '../../site/agreement'
import { onPaper } from '../../site/on-paper'
import { expect, laptop, test } from '../../site/story'

const twelve = [
	...(['bakery', 'dental', 'inn', 'bookshop', 'creditUnion', 'vet'] as const),
	...(['bicycles', 'chandlery', 'clapboard', 'fieldstone', 'stucco', 'approved'] as const),
]

test('a designer renews twelve agreements at 4 % more, one of them adjusted', async ({ as, site, cast }) => {
	test.slow()
	for (const key of twelve) await onPaper(site, await issuedTo(site, key))
	const page = await as('designer', laptop)
	await page.goto('/studio/agreements')
	await page.getByRole('link', { name: 'Renew for another year' }).click()
	await page.getByLabel('That end in').fill(String(new Date().getFullYear() + 1))
	await page.getByLabel('Prices change by').fill('4')
	await page.getByRole('button', { name: 'Work it out' }).click()
	await expect(page.getByRole('checkbox', { name: /^Renew / })).toHaveCount(12)
	const price = page.getByRole('textbox', { name: new RegExp(`^${cast.clients.inn.name}, winter`) })
	// 612.50 and 4 % are 637.00: to fives 635.00.
	await expect(price).toHaveValue('635.00')
	await price.fill('650.00')
	await page.getByRole('button', { name: 'Issue what is ticked' }).click()
	await expect(page.getByRole('heading', { name: 'Twelve issued' })).toBeVisible()
	await expect(page.getByRole('checkbox', { name: /^Renew / })).toHaveCount(0)
	await page.getByRole('link', { name: cast.clients.inn.name }).click()
	await expect(page.getByText('$1,050.00 fixed in all')).toBeVisible()
})
