import { barriers, lowTargets, movingParts, overflow } from '../site/barriers'
import { tabTo } from '../site/keyboard'
import { clientPages } from '../site/pages/client'
import { studioPages } from '../site/pages/studio'
import { visitEach, walkIn } from '../site/pages/visit'
import { expect, laptop, phone, test } from '../site/story'

const devices = [
	['a phone', phone],
	['a laptop', laptop],
] as const
const doors = [
	['client’s', clientPages],
	['studio’s', studioPages],
] as const
const schemes = ['light', 'dark'] as const

/** As many pages as one story looks at in its time. */
const aStory = 8
const parts = doors.flatMap(([whose, pages]) =>
	Array.from({ length: Math.ceil(pages.length / aStory) }, (_, part) => ({
		whose,
		pages: pages.slice(part * aStory, (part + 1) * aStory),
		from: part * aStory + 1,
	})),
)

for (const [where, device] of devices) {
	for (const { whose, pages, from } of parts)
		test(`axe finds no barrier on the ${whose} pages from the ${from}. on, on ${where}, by day and at dusk`, async ({
			as,
			papered,
		}) => {
			test.slow()
			await visitEach({ as, cast: papered }, pages, device, async (page, name) => {
				await expect(page.getByRole('main')).toHaveCount(1)
				await expect(page.getByRole('heading', { level: 1 })).toHaveCount(1)
				for (const colorScheme of schemes) {
					await page.emulateMedia({ colorScheme })
					expect.soft(await barriers(page), `${name}, ${colorScheme}`).toEqual([])
				}
			})
		})

	test(`axe finds no barrier on the way in on ${where}, by day and at dusk`, async ({ visit, cast, mailbox }) => {
		const page = await visit(device)
		await walkIn(page, mailbox, cast.people.vetApprover.address, async (name) => {
			await expect(page.getByRole('heading', { level: 1 })).toHaveCount(1)
			for (const colorScheme of schemes) {
				await page.emulateMedia({ colorScheme })
				expect.soft(await barriers(page), `${name}, ${colorScheme}`).toEqual([])
			}
		})
	})
}

/** A laptop, and a window of 1280 × 1024 px at 400 %: WCAG 2.2, 1.4.10. */
const zoomed = { viewport: { width: 320, height: 256 }, deviceScaleFactor: 4 }
const windows = [
	['on a laptop', laptop],
	['in a narrow window', { viewport: { width: 390, height: 844 } }],
	['at 400 %', zoomed],
] as const

for (const [how, options] of windows)
	test(`a homeowner chooses and approves by keyboard alone ${how}`, async ({ as, cast }) => {
		const page = await as('clapboardApprover', options)
		await page.goto(`/proposal/${cast.proposals.clapboard}`)
		await tabTo(page, page.getByRole('link', { name: /^Put it on the wall\s*: Brass and navy$/ }))
		await page.keyboard.press('Enter')
		const onWall = page.getByRole('link', { name: /^On your wall now\s*: Brass and navy$/ })
		await expect(onWall).toBeFocused()
		const said = page.getByRole('region', { name: 'Your answer' }).locator('[aria-live=polite]')
		await expect(said).toContainText('Brass and navy')
		const before = String(await said.textContent())

		const lights = page.getByRole('checkbox', { name: /Two strings of warm lights/ })
		await tabTo(page, lights)
		await page.keyboard.press('Space')
		await expect(page.getByRole('row', { name: /Two strings of warm lights/ })).toBeVisible()
		await expect(lights).toBeFocused()
		await expect(said).not.toHaveText(before)

		await tabTo(page, page.getByRole('button', { name: 'Approve this design' }))
		await page.keyboard.press('Enter')
		await expect(page.getByRole('heading', { name: 'Check before you approve' })).toBeVisible()
		await tabTo(page, page.getByRole('button', { name: 'Approve this design' }))
		await page.keyboard.press('Enter')
		await expect(page.getByRole('heading', { name: 'Approved. Thank you.' })).toBeVisible()
	})

test('no page scrolls sideways at 400 %', async ({ as, cast, papered, visit, mailbox }) => {
	test.slow()
	await visitEach({ as, cast: papered }, [...clientPages, ...studioPages], zoomed, async (page, name) => {
		expect.soft(await overflow(page), name).toEqual({ px: 0, by: [] })
	})
	const page = await visit(zoomed)
	await walkIn(page, mailbox, cast.people.vetApprover.address, async (name) => {
		expect.soft(await overflow(page), name).toEqual({ px: 0, by: [] })
	})
})

test('nothing that a thumb presses on the client’s pages is lower than 44 px, nor do they scroll sideways', async ({
	as,
	cast,
	papered,
	visit,
	mailbox,
}) => {
	test.slow()
	await visitEach({ as, cast: papered }, clientPages, phone, async (page, name) => {
		expect.soft(await lowTargets(page), name).toEqual([])
		expect.soft(await overflow(page), name).toEqual({ px: 0, by: [] })
	})
	const page = await visit(phone)
	await walkIn(page, mailbox, cast.people.vetApprover.address, async (name) => {
		expect.soft(await lowTargets(page), name).toEqual([])
	})
})

test('whoever asks for less motion gets none', async ({ as, papered }) => {
	const pages = [...clientPages, ...studioPages].filter(({ name }) => /^(three palettes|season|home)$/.test(name))
	expect(pages).toHaveLength(3)
	await visitEach({ as, cast: papered }, pages, { ...laptop, reducedMotion: 'reduce' }, async (page, name) => {
		expect.soft(await movingParts(page), name).toEqual([])
	})
})
