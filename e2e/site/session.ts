import { randomBytes } from 'node:crypto'
import { expect, type Page } from '@playwright/test'
import { closeDatabase, openDatabase } from '@/db/open'
import { sessionAdapter } from '@/db/sign-in/adapter'
import { linkIn, type Mailbox } from './mailbox'
import type { Site } from './server'

/** Does something in the site's own record, from this process, while the site runs. */
export async function inRecordOf({ folder }: Pick<Site, 'folder'>, act: () => Promise<unknown>): Promise<void> {
	openDatabase(folder)
	await act()
	closeDatabase()
}

/** Writes a session for a person of the cast into the site's record and hands out what its cookie holds. */
export async function sessionFor(site: Pick<Site, 'folder'>, userId: string): Promise<string> {
	const sessionToken = randomBytes(32).toString('base64url')
	const adapter = () => sessionAdapter(() => new Date(), undefined, 'link')
	await inRecordOf(site, () => adapter().createSession({ sessionToken, userId }))
	return sessionToken
}

/** Signs in as anybody does: by the link of the `after`th mail to the address. */
export async function signInBy(page: Page, mailbox: Mailbox, address: string, after = 0): Promise<void> {
	await page.goto('/sign-in')
	await page.getByLabel('Mail address').fill(address)
	await page.getByRole('button', { name: 'Send me the link' }).click()
	await page.waitForURL(/\/sent$/)
	await page.goto(linkIn(await mailbox.next(address, /^Your link to sign in$/, after)))
	await page.getByRole('button', { name: 'Sign in' }).click()
	await expect(page.getByRole('button', { name: 'Sign out' })).toBeVisible()
}
