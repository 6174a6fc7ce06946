import type { Page } from '@playwright/test'
import { countIn } from '../../site/record'
import { expect, laptop, phone, test } from '../../site/story'

const notTaken =
	'The design was revised while you were reading. Your answer was not taken: look at what changed, then answer.'
const notAnswered =
	'The design was revised while you were reading. Nothing was answered: look at what changed, then answer.'

const alertOn = (page: Page) => page.getByRole('main').getByRole('alert')

test('what a client does on a page of the revision before leads to what changed, and answers nothing', async ({
	as,
	cast,
	site,
}) => {
	const path = `/proposal/${cast.proposals.clapboard}`
	const phoned = await as('clapboardApprover', phone)
	const tab = async (where: string) => {
		const page = await phoned.context().newPage()
		await page.goto(where)
		return page
	}
	const palettes = await tab(path)
	const extras = await tab(`${path}?option=b`)
	const approving = await tab(`${path}?option=b`)
	const wishing = await tab(path)
	const skipping = await tab(path)
	const checking = await tab(`${path}?option=b`)
	await checking.getByRole('button', { name: 'Approve this design' }).click()
	await expect(checking.getByRole('heading', { name: 'Check before you approve' })).toBeVisible()
	const answers = () => countIn(site, 'SELECT count(*) FROM answer')
	const before = answers()

	const studio = await as('designer', laptop)
	await studio.goto(`/studio/proposal/${cast.proposals.clapboard}`)
	await studio.getByRole('textbox', { name: 'Letter' }).fill('The brass has gone out of stock; bronze instead.')
	await studio.getByRole('button', { name: 'Publish to the client' }).click()
	await studio.getByRole('button', { name: 'Publish', exact: true }).click()
	await expect(studio.getByText('Published. The client’s contacts hear of it by mail.')).toBeVisible()
	await expect(studio.getByRole('link', { name: 'revision 2' })).toBeVisible()

	await palettes.getByRole('link', { name: /^Put it on the wall\s*: Bone and charcoal$/ }).click()
	await expect(alertOn(palettes)).toHaveText(notAnswered)
	await expect(alertOn(palettes)).toBeFocused()
	await expect(alertOn(palettes)).toBeInViewport()
	await expect(palettes.getByRole('region', { name: 'What changed since revision 1' })).toContainText('bronze instead')

	await extras.getByRole('checkbox', { name: /Two strings of warm lights/ }).click()
	await expect(alertOn(extras)).toHaveText(notAnswered)
	await expect(alertOn(extras)).toBeInViewport()

	for (const button of [
		approving.getByRole('button', { name: 'Approve this design' }),
		wishing.getByRole('link', { name: 'Ask for a change' }),
		skipping.getByRole('link', { name: 'Skip this season' }),
		checking.getByRole('link', { name: 'Back to the design' }),
	])
		await button.click()
	for (const page of [approving, wishing, skipping]) await expect(alertOn(page)).toHaveText(notTaken)
	await expect(alertOn(checking)).toHaveText(notAnswered)
	await expect(approving.getByRole('region', { name: 'What changed since revision 1' })).toBeVisible()
	expect(answers()).toBe(before)

	await approving.getByRole('link', { name: /^Put it on the wall\s*: Brass and navy$/ }).click()
	await expect(approving.getByText('On your wall now')).toBeVisible()
	await expect(alertOn(approving)).toHaveCount(0)
	await approving.getByRole('button', { name: 'Approve this design' }).click()
	await expect(approving.getByText(/, revision 2\. It is approved only when/)).toBeVisible()
	await approving.getByRole('button', { name: 'Approve this design' }).click()
	await expect(approving.getByRole('heading', { name: 'Approved. Thank you.' })).toBeVisible()
	expect(answers()).toBe(before + 1)
})
