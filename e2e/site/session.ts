import { createHash, randomBytes } from 'node:crypto'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import type { Site } from './server'

/** Writes a session for a person of the cast into the site's record and hands out what its cookie holds. */
export function sessionFor({ folder }: Site, personId: string): string {
	const token = randomBytes(32).toString('base64url')
	const db = new Database(join(folder, 'studio.db'))
	db.pragma('busy_timeout = 5000')
	db.prepare('INSERT INTO session (session_token, user_id, expires, created_at) VALUES (?, ?, ?, ?)').run(
		createHash('sha256').update(token).digest('hex'),
		personId,
		Date.now() + 86_400_000,
		new Date().toISOString(),
	)
	db.close()
	return token
}
