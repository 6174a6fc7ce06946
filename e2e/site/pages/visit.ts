import type { BrowserContextOptions, Page, Response } from '@playwright/test'
import { linkIn, type Mailbox } from '../mailbox'
import type { As } from '../story'
import type { Papered } from './papers'
import type { Shown } from './shown'

type Site = { readonly as: As; readonly cast: Papered }
type LookAt = (page: Page, name: string, answer: Response | null) => Promise<void>

/** Goes through `pages` as whoever each is for, one browser a person, and looks at every one. */
export async function visitEach(
	{ as, cast }: Site,
	pages: readonly Shown[],
	options: BrowserContextOptions,
	lookAt: LookAt,
): Promise<void> {
	for (const who of new Set(pages.map((page) => page.as))) {
		const page = await as(who, options)
		for (const { name, at } of pages.filter((each) => each.as === who))
			await lookAt(page, name, await page.goto(at(cast)))
		await page.context().close()
	}
}

type Look = (name: string) => Promise<void>

/** The whole way in, from the sign-in page by a link to one that is over; `look` is called at every page of it. */
export async function walkIn(page: Page, mailbox: Mailbox, address: string, look: Look): Promise<void> {
	await page.goto('/sign-in')
	await look('sign in')
	await page.getByRole('button', { name: 'Send me the link' }).click()
	await page.waitForURL(/[?&]form=/)
	await look('sign in, no address')
	await page.getByLabel('Mail address').fill(address)
	await page.getByRole('button', { name: 'Send me the link' }).click()
	await page.waitForURL(/\/sent$/)
	await look('sent')
	const mail = await mailbox.next(address, /link to sign in/)
	await page.getByLabel('Code from the mail').fill('1')
	await page.getByRole('button', { name: 'Sign in' }).click()
	await page.waitForURL(/code=wrong/)
	await look('sent, wrong code')
	await page.goto(linkIn(mail))
	await look('confirm')
	await page.goto('/sign-in/over')
	await look('over')
}
