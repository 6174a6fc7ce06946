import type { Page } from '@playwright/test'
import { groupOn, rowOf } from '../../site/season'
import { expect, laptop, phone, test } from '../../site/story'

const palettes = ['Rose and pewter', 'Brass and navy', 'Bone and charcoal'] as const

/** Keeps a page's scripts from arriving until what is handed back is called. */
async function holdScripts(page: Page): Promise<() => void> {
	const held: (() => void)[] = []
	const ready = new Promise<void>((resolve) => held.push(resolve))
	await page.route('**/_next/static/**/*.js', async (route) => {
		await ready
		await route.continue()
	})
	return () => {
		for (const release of held) release()
	}
}

test('a homeowner puts each palette on the wall, on a phone, and approves the second', async ({ as, cast }) => {
	const designer = await as('designer', laptop)
	const household = cast.clients.clapboard.name
	const page = await as('clapboardApprover', phone)
	await page.goto('/')
	await page.getByRole('link', { name: 'Look and answer' }).click()
	const walls = page.getByRole('img', { name: /Winter, by day: two containers before a clapboard wall/ })
	const bar = page.getByRole('region', { name: 'Your answer' })
	const strip = (name: string) =>
		page.getByRole('listitem').filter({ has: page.getByRole('link', { name: `: ${name}` }) })
	const total = page.getByRole('row', { name: /^Total/ }).getByRole('cell')

	await expect(walls).toHaveCount(palettes.length)
	for (const [index, name] of palettes.entries())
		await expect(walls.nth(index)).toHaveAccessibleName(new RegExp(`^${name}\\. `))
	await expect(bar).toContainText('Three palettes to choose from')
	await expect(bar).not.toContainText('$')
	await expect(bar.getByRole('button')).toHaveCount(0)
	await expect(page.getByText('On your wall now')).toHaveCount(0)
	await expect(page.getByRole('heading', { name: 'What is in each pot' })).toHaveCount(0)
	await expect(page.getByRole('heading', { name: 'The price' })).toHaveCount(0)
	await bar.getByRole('link', { name: 'Choose a palette' }).click()
	await expect(page.getByRole('heading', { name: 'Three palettes for your wall' })).toBeInViewport()

	const sums = new Map<string, string>()
	for (const name of palettes) {
		const sum = await strip(name).getByText(/^\$/).textContent()
		sums.set(name, String(sum))
		await strip(name).getByRole('link').click()
		await expect(bar).toContainText(name)
		await expect(bar).toContainText(`${sum} · goes in`)
		await expect(total).toHaveText(String(sum))
		await expect(walls).toHaveCount(1)
		await expect(walls).toHaveAccessibleName(new RegExp(`^${name}\\. `))
		await expect(page.getByRole('figure', { name: `On your wall: ${name}` })).toBeInViewport()
		await expect(strip(name)).toContainText('On your wall now')
		await expect(page.getByRole('link', { name: /^Put it on the wall/ })).toHaveCount(2)
		await expect(page).toHaveURL(/\?option=[abc]&revision=[0-9a-f]{64}$/)
	}
	expect(new Set(sums.values()).size).toBe(palettes.length)

	await page.goBack()
	await expect(bar).toContainText('Three palettes to choose from')
	await page.goBack()
	await expect(page.getByRole('link', { name: 'Look and answer' })).toBeVisible()
	await designer.goto('/studio')
	await expect(rowOf(groupOn(designer, 'Waiting for them'), household)).toContainText('3 palettes')

	await page.getByRole('link', { name: 'Look and answer' }).click()
	await expect(bar).toContainText('Three palettes to choose from')
	await page.getByRole('link', { name: /^Put it on the wall\s*: Brass and navy$/ }).click()
	await expect(bar).toContainText('Brass and navy')
	const tax = await page
		.getByRole('row', { name: /^Sales tax/ })
		.getByRole('cell')
		.allTextContents()
	await bar.getByRole('button', { name: 'Approve this design' }).click()
	await expect(page.getByRole('heading', { name: 'Check before you approve' })).toBeVisible()
	await expect(page.getByText('Brass and navy', { exact: true })).toBeVisible()
	const sum = sums.get('Brass and navy') ?? 'no sum'
	await expect(page.getByText(sum, { exact: true })).toBeVisible()
	const net = [sum, ...tax].map((amount) => Number(amount.slice(1))).reduce((left, each) => left - each)
	expect(tax.length).toBeGreaterThan(0)
	await page.getByRole('button', { name: 'Approve this design' }).click()
	await expect(page.getByRole('heading', { name: 'Approved. Thank you.' })).toBeVisible()

	await designer.reload()
	const row = rowOf(groupOn(designer, 'Settled'), household)
	await expect(row).toContainText('Approved')
	await expect(row).toContainText('Brass and navy')
	await expect(row).toContainText(net.toFixed(2))
	await expect(rowOf(groupOn(designer, 'Waiting for them'), household)).toHaveCount(0)
})

test('an extra that is ticked before the scripts arrive is in the total as soon as they do', async ({ as, cast }) => {
	const page = await as('bakeryApprover', phone)
	const release = await holdScripts(page)
	await page.goto(`/proposal/${cast.proposals.bakery}`, { waitUntil: 'commit' })
	await page.getByRole('checkbox', { name: /Two strings of warm lights/ }).check()
	await expect(page.getByRole('row', { name: /Two strings of warm lights/ })).toHaveCount(0)
	release()
	await expect(page.getByRole('row', { name: /Two strings of warm lights/ })).toBeVisible()
	await expect(page).toHaveURL(/extra=/)
})

test('the way back leads to what was there, also after a tap before the scripts arrived', async ({ as, cast }) => {
	const page = await as('clapboardApprover', phone)
	const release = await holdScripts(page)
	const bar = page.getByRole('region', { name: 'Your answer' })
	await page.goto(`/proposal/${cast.proposals.clapboard}`, { waitUntil: 'commit' })
	await bar.getByRole('link', { name: 'Choose a palette' }).click()
	await expect(page).toHaveURL(/#palettes$/)
	release()
	// Scripts that have arrived give the entry of the history a state.
	await expect.poll(() => page.evaluate(() => history.state !== null)).toBe(true)
	await page.getByRole('link', { name: /^Put it on the wall\s*: Brass and navy$/ }).click()
	await expect(bar).toContainText('Brass and navy')
	await page.goBack()
	await expect(bar).toContainText('Three palettes to choose from')
	await page.goForward()
	await expect(bar).toContainText('Brass and navy')
})
