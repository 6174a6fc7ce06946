import { createHash } from 'node:crypto'
import { join } from 'node:path'
import Database from 'better-sqlite3'

const plain = (value: unknown) => (Buffer.isBuffer(value) ? value.toString('hex') : value)

/** The site's record, for a look or a change behind its back. */
export function record<T>(folder: string, act: (db: Database.Database) => T): T {
	const db = new Database(join(folder, 'studio.db'))
	db.pragma('busy_timeout = 5000')
	try {
		return act(db)
	} finally {
		db.close()
	}
}

export const count = (folder: string, table: string): number =>
	record(folder, (db) => Number(db.prepare(`SELECT count(*) FROM ${table}`).pluck().get()))

/** Number of rows and hash of all rows, table by table. The side file, which holds counters and activity, is not in it. */
export function snapshot(folder: string): Record<string, string> {
	return record(folder, (db) => {
		const names = db.prepare<[], string>("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name").pluck()
		return Object.fromEntries(
			names.all().map((name) => {
				const rows = db.prepare<[], unknown[]>(`SELECT * FROM "${name}"`).raw().all()
				const lines = rows.map((row) => JSON.stringify(row.map(plain))).toSorted()
				return [name, `${lines.length} ${createHash('sha256').update(lines.join('\n')).digest('hex').slice(0, 16)}`]
			}),
		)
	})
}

/** Resolves when no mail waits to be sent. */
export async function mailIsOut(folder: string): Promise<void> {
	const open = () =>
		record(folder, (db) =>
			db.prepare('SELECT count(*) FROM outbox WHERE sent_at IS NULL AND dropped_at IS NULL').pluck().get(),
		)
	for (let tries = 0; open() !== 0; tries += 1) {
		if (tries > 1000) throw new Error('Mail waits and is not sent.')
		await new Promise((resolve) => setTimeout(resolve, 50))
	}
}

/** The record as it stands when nothing is on its way any more: a mail that goes out between two looks would alter it. */
export async function snapshotAtRest(folder: string): Promise<Record<string, string>> {
	await mailIsOut(folder)
	return snapshot(folder)
}
