import { type BrowserContext, type BrowserContextOptions, test as base, expect, type Page } from '@playwright/test'
import type { Seeded } from '@/demo/seed'
import { type Mailbox, openMailbox } from './mailbox'
import { type Papered, paperedIn } from './pages/papers'
import { type EmptySite, type Site, startEmptySite, startSite } from './server'
import { sessionFor } from './session'
import { watch } from './watch'

export const phone: BrowserContextOptions = {
	viewport: { width: 390, height: 844 },
	isMobile: true,
	hasTouch: true,
	deviceScaleFactor: 2,
}
export const laptop: BrowserContextOptions = { viewport: { width: 1440, height: 900 } }

export type Key = keyof Seeded['people']
export type Visit = (options?: BrowserContextOptions) => Promise<Page>
export type As = (person: Key, options?: BrowserContextOptions) => Promise<Page>
type Story = {
	readonly mailbox: Mailbox
	readonly site: Site
	readonly cast: Seeded
	/** The cast, with agreements and an invoice drawn up before the story begins. */
	readonly papered: Papered
	/** A studio that nobody has set up yet. */
	readonly emptySite: EmptySite
	/** A browser of one's own, at the site, with nobody signed in. */
	readonly visit: Visit
	/** A browser in which one of the cast is signed in. */
	readonly as: As
	/** What went wrong in any page without a word to anybody; a story takes out what it expects. */
	readonly wrong: string[]
	/** Every browser that a story has open: closed before its site stops, which else waits for them. */
	readonly open: BrowserContext[]
	/** Opens a watched browser at an address; closed when the story ends. */
	readonly browse: (baseURL: string, options: BrowserContextOptions) => Promise<Page>
}

const closeAll = (open: readonly BrowserContext[]) => Promise.all(open.map((context) => context.close()))

export const test = base.extend<Story>({
	wrong: async ({ browserName: _ }, use) => {
		const found: string[] = []
		await use(found)
		expect(found).toEqual([])
	},
	open: async ({ browserName: _ }, use) => {
		await use([])
	},
	browse: async ({ browser, wrong, open }, use) => {
		await use(async (baseURL, options) => {
			const context = await browser.newContext({ ...options, baseURL })
			open.push(context)
			await watch(context, wrong)
			return context.newPage()
		})
		await closeAll(open)
	},
	mailbox: async ({ browserName: _ }, use) => {
		const mailbox = await openMailbox()
		await use(mailbox)
		await mailbox.close()
	},
	site: async ({ mailbox, open }, use) => {
		const site = await startSite(mailbox.url)
		await use(site)
		await closeAll(open)
		await site.stop()
	},
	emptySite: async ({ mailbox, open }, use) => {
		const site = await startEmptySite(mailbox.url)
		await use(site)
		await closeAll(open)
		await site.stop()
	},
	cast: async ({ site }, use) => {
		await use(site.cast)
	},
	papered: async ({ site }, use) => {
		await use(await paperedIn(site))
	},
	visit: async ({ site, browse }, use) => {
		await use((options = laptop) => browse(site.url, options))
	},
	as: async ({ visit, site, cast }, use) => {
		await use(async (person, options) => {
			const page = await visit(options)
			await page.context().addCookies([
				{
					name: 'doorsill',
					value: await sessionFor(site, cast.people[person].id),
					url: site.url,
					httpOnly: true,
					sameSite: 'Lax',
				},
			])
			return page
		})
	},
})

export { expect }
