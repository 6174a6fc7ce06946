import { join } from 'node:path'
import Database from 'better-sqlite3'
import type { Site } from './server'

/** Asks the site's own record a question whose answer is one number. */
export function countIn({ folder }: Pick<Site, 'folder'>, question: string, ...values: readonly string[]): number {
	const db = new Database(join(folder, 'studio.db'), { readonly: true })
	const answer = db
		.prepare<string[], number>(question)
		.pluck()
		.get(...values)
	db.close()
	if (answer === undefined) throw new Error(`No answer to: ${question}`)
	return answer
}

/** Mails that are still to be sent; at nought, what did not come will not come. */
export const mailsToSend = (site: Pick<Site, 'folder'>): number =>
	countIn(site, 'SELECT count(*) FROM outbox WHERE sent_at IS NULL AND dropped_at IS NULL')
