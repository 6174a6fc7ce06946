import { expect, laptop, phone, test } from '../../site/story'

const said = 'The walls are thicker than the pot: nothing would be left inside.'

for (const [where, device] of [
	['a laptop', laptop],
	['a phone', phone],
] as const)
	test(`a designer measures a pot at the kerb and sees it drawn, on ${where}`, async ({ as, cast }) => {
		const page = await as('designer', device)
		await page.goto(`/studio/clients/${cast.clients.creditUnion.id}/container?place=${cast.places.creditUnion}`)
		const drawing = page.getByRole('img', { name: /cut open from the front and seen from above/ })
		const fact = (name: string) =>
			page.getByRole('group', { name: 'Outer measures' }).getByRole('term').filter({ hasText: name }).locator('+ dd')
		await expect(drawing).toHaveAccessibleName(/not measured yet/)

		await page.getByLabel('Name', { exact: true }).fill('Pot by the bench')
		await page.getByLabel('Material').selectOption('terracotta')
		await page.getByLabel('Across at the rim', { exact: true }).fill('18 1/2')
		await page.getByLabel('Across at the foot', { exact: true }).fill('14')
		await expect(drawing).toHaveAccessibleName(/18.5 in across at the rim and 14 in across at the foot/)
		await expect(fact('Soil').first()).toHaveText('–')
		await page.getByLabel('Height', { exact: true }).fill('46 cm')
		await expect(drawing).toHaveAccessibleName(/18.1102 in high/)
		await expect(fact('Soil').first()).toHaveText(/^\d+(\.\d)? dry qt, \d+(\.\d)? in deep$/)
		await expect(fact('Weight, soil wet')).toHaveText(/^\d+ lb$/)

		await page.getByLabel('Thickness of the wall').fill('7')
		await expect(page.getByRole('status').getByText(said)).toBeInViewport()
		await page.getByRole('button', { name: 'Save the card' }).click()
		const refused = page.getByRole('alert')
		await expect(refused.getByRole('link', { name: said })).toBeVisible()
		await expect(page.getByLabel('Thickness of the wall')).toHaveAccessibleDescription(new RegExp(said))
		await expect(page.getByLabel('Across at the rim', { exact: true })).toHaveValue('18 1/2')
		await expect(page.getByLabel('Height', { exact: true })).toHaveValue('46 cm')

		await page.getByLabel('Thickness of the wall').fill('7/8')
		await expect(page.getByRole('status').getByText(said)).toHaveCount(0)
		await page.getByRole('button', { name: 'Save the card' }).click()
		await page.getByRole('link', { name: /Pot by the bench/ }).click()
		await expect(page.getByLabel('Across at the rim', { exact: true })).toHaveValue('18.5')
		await expect(page.getByLabel('Thickness of the wall')).toHaveValue('0.875')
		await expect(drawing).toHaveAccessibleName(/18.5 in across at the rim/)
	})

test('without scripts the kept measures are drawn, and what is wrong is told beside its box', async ({ as, cast }) => {
	const page = await as('designer', { ...laptop, javaScriptEnabled: false })
	await page.goto(
		`/studio/clients/${cast.clients.creditUnion.id}/container?place=${cast.places.creditUnion}&container=${cast.containers.creditUnionLeft}`,
	)
	await expect(page.getByRole('img', { name: /in high\. Inside, its opening is/ })).toBeVisible()
	await page.getByLabel('From soil to rim').fill('19 1/2')
	await page.getByLabel('Height', { exact: true }).fill('12')
	await page.getByRole('button', { name: 'Save the card' }).click()
	await expect(page.getByLabel('From soil to rim')).toHaveAccessibleDescription(
		/deeper than the pot: no soil would fit/,
	)
	await expect(page.getByLabel('Height', { exact: true })).toHaveValue('12')
	await expect(page.getByRole('img', { name: /12 in high\.$/ })).toBeVisible()
})
