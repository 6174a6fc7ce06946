import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { type BrowserContextOptions, chromium, type Page } from '@playwright/test'
import config from './playwright.config'
import { openMailbox } from './site/mailbox'
import { clientPages } from './site/pages/client'
import { type Papered, paperedIn } from './site/pages/papers'
import { studioPages } from './site/pages/studio'
import { walkIn } from './site/pages/visit'
import { type Site, startSite } from './site/server'
import { sessionFor } from './site/session'
import { laptop, phone } from './site/story'
import prepare from './template'

/** `node --import tsx e2e/screens.ts`: a picture of every page, on a phone and a laptop, light and dusk, to be looked at. */
const folder = join(import.meta.dirname, 'output', 'screens')
const devices = { phone, laptop } as const satisfies Record<string, BrowserContextOptions>
const schemes = ['light', 'dark'] as const

async function shoot(page: Page, name: string): Promise<void> {
	for (const colorScheme of schemes) {
		await page.emulateMedia({ colorScheme })
		const file = `${name.replaceAll(/[^a-z0-9]+/g, '-')}-${colorScheme}.png`
		await page.screenshot({ path: join(folder, file), fullPage: true })
	}
}

async function shootAs(site: Site, cast: Papered, page: Page, device: string): Promise<void> {
	const signIn = async (person: keyof Site['cast']['people']) => ({
		name: 'doorsill',
		value: await sessionFor(site, site.cast.people[person].id),
		url: site.url,
	})
	for (const { name, as, at } of [...clientPages, ...studioPages]) {
		await page.context().addCookies([await signIn(as)])
		await page.goto(at(cast), { waitUntil: 'networkidle' })
		await shoot(page, `${as === 'designer' || as === 'helper' ? 'studio' : 'client'} ${name} ${device}`)
	}
}

prepare()
rmSync(folder, { recursive: true, force: true })
mkdirSync(folder, { recursive: true })
const mailbox = await openMailbox()
const site = await startSite(mailbox.url)
const cast = await paperedIn(site)
const browser = await chromium.launch(config.use?.launchOptions)
for (const [device, options] of Object.entries(devices)) {
	const context = await browser.newContext({ ...options, baseURL: site.url, locale: 'en-US' })
	const page = await context.newPage()
	const { address } = site.cast.people[device === 'phone' ? 'vetApprover' : 'fieldstoneApprover']
	await walkIn(page, mailbox, address, (name) => shoot(page, `public ${name} ${device}`))
	await shootAs(site, cast, page, device)
	await context.close()
}
await browser.close()
await site.stop()
await mailbox.close()
