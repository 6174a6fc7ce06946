import { randomBytes } from 'node:crypto'
import { closeDatabase, openDatabase } from '@/db/open'
import { sessionAdapter } from '@/db/sign-in/adapter'
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
	await inRecordOf(site, () => sessionAdapter(() => new Date()).createSession({ sessionToken, userId }))
	return sessionToken
}
