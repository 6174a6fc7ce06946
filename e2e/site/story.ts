import { type BrowserContext, type BrowserContextOptions, test as base, expect, type Page } from '@playwright/test'
import type { Seeded } from '@/demo/seed'
import { type Mailbox, openMailbox } from './mailbox'
import { type Site, startSite } from './server'
import { sessionFor } from './session'

export const phone: BrowserContextOptions = {
	viewport: { width: 390, height: 844 },
	isMobile: true,
	hasTouch: true,
	deviceScaleFactor: 2,
}
export const laptop: BrowserContextOptions = { viewport: { width: 1440, height: 900 } }

type Key = keyof Seeded['people']
type Story = {
	readonly mailbox: Mailbox
	readonly site: Site
	readonly cast: Seeded
	/** A browser of one's own, at the site, with nobody signed in. */
	readonly visit: (options?: BrowserContextOptions) => Promise<Page>
	/** A browser in which one of the cast is signed in. */
	readonly as: (person: Key, options?: BrowserContextOptions) => Promise<Page>
}

/** What went wrong in a page without a word to anybody: script errors, refusals of the policy, failed requests of ours. */
function watch(page: Page, wrong: string[]): void {
	page.on('pageerror', (error) => wrong.push(`script error: ${error.message}`))
	page.on('console', (message) => {
		if (message.type() === 'error' && !/status of (404|403|409|422|401|303)/.test(message.text()))
			wrong.push(`console: ${message.text()}`)
	})
}

export const test = base.extend<Story & { readonly open: BrowserContext[]; readonly wrong: string[] }>({
	open: async ({ browserName: _ }, use) => {
		const contexts: BrowserContext[] = []
		await use(contexts)
		await Promise.all(contexts.map((context) => context.close()))
	},
	wrong: async ({ browserName: _ }, use) => {
		const found: string[] = []
		await use(found)
		expect(found).toEqual([])
	},
	mailbox: async ({ browserName: _ }, use) => {
		const mailbox = await openMailbox()
		await use(mailbox)
		await mailbox.close()
	},
	site: async ({ mailbox }, use) => {
		const site = await startSite(mailbox.url)
		await use(site)
		await site.stop()
	},
	cast: async ({ site }, use) => {
		await use(site.cast)
	},
	visit: async ({ browser, site, open, wrong }, use) => {
		await use(async (options = laptop) => {
			const context = await browser.newContext({ ...options, baseURL: site.url })
			open.push(context)
			const page = await context.newPage()
			watch(page, wrong)
			return page
		})
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
