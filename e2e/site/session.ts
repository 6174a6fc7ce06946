import { randomBytes } from 'node:crypto'
import { closeDatabase, openDatabase } from '@/db/open'
import { sessionAdapter } from '@/db/sign-in/adapter'
import type { Site } from './server'

/** Writes a session for a person of the cast into the site's record and hands out what its cookie holds. */
export async function sessionFor({ folder }: Pick<Site, 'folder'>, userId: string): Promise<string> {
	const sessionToken = randomBytes(32).toString('base64url')
	openDatabase(folder)
	await sessionAdapter(() => new Date()).createSession({ sessionToken, userId })
	closeDatabase()
	return sessionToken
}
