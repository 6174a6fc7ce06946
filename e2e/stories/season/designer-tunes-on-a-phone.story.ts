import { expect, phone, test } from '../../site/story'

test('on a phone each pot is folded to one line, and opens at a touch or by what leads into it', async ({
	as,
	cast,
}) => {
	const page = await as('designer', phone)
	await page.goto(`/studio/proposal/${cast.proposals.bicycles}`)
	const pot = page.locator('summary').filter({ hasText: /^Workshop door/ })
	const count = page.getByLabel('Count, Rust and moss, Workshop door, line 2')
	await expect(pot).toContainText('8 lines')
	await expect(count).toBeHidden()
	await expect(page.getByText('Berried juniper: by published lists poisonous to people').first()).toBeVisible()

	await pot.click()
	await expect(count).toBeVisible()
	await count.fill('many')
	const stop = page.getByRole('region', { name: 'Save and publish' }).getByRole('listitem').getByRole('link')
	await expect(stop).toHaveCount(1)
	await expect(count).toBeVisible()
	await pot.click()
	await expect(count).toBeHidden()
	await stop.click()
	await expect(count).toBeVisible()
	await expect(count).toBeFocused()

	await count.fill('9')
	await expect(stop).toHaveCount(0)
	await expect(page.getByText('Saved.', { exact: true })).toBeVisible()
	await page.reload()
	await expect(count).toBeHidden()
	await pot.click()
	await expect(count).toHaveValue('9')
})
