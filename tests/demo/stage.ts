import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { closeSideFile } from '@/db/house/side-file'
import { closeDatabase, connect, databaseFile } from '@/db/open'
import { start } from '@/db/start/start'
import { type Seeded, seed } from '@/demo/seed'
import type { Day } from '@/lib/units/day'

export type Played = { readonly cast: Seeded; readonly folder: string; readonly end: () => void }

/** A temporary studio with the cast in it, left open. */
export async function played(today: Day, canary = false, agreed = false): Promise<Played> {
	const folder = mkdtempSync(join(tmpdir(), 'doorsill-cast-'))
	const end = () => {
		closeDatabase()
		closeSideFile()
		rmSync(folder, { recursive: true })
	}
	start(folder)
	return { cast: await seed({ today, canary, agreed }), folder, end }
}

const plain = (value: unknown) => (Buffer.isBuffer(value) ? value.toString('hex') : value)

/** Every row of every table of ours, as text. */
export function rowsIn(folder: string): Record<string, string[]> {
	const sqlite = connect(databaseFile(folder))
	try {
		const names = sqlite
			.prepare<[], string>(
				"SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE '\\_\\_%' ESCAPE '\\'",
			)
			.pluck()
			.all()
		const of = (table: string) =>
			sqlite
				.prepare<[], unknown[]>(`SELECT * FROM "${table}"`)
				.raw()
				.all()
				.map((row) => JSON.stringify(row.map(plain)))
				.toSorted()
		return Object.fromEntries(names.map((name) => [name, of(name)]))
	} finally {
		sqlite.close()
	}
}

/** What was found. @throws when nothing was */
export function found<T>(value: T | undefined): T {
	if (value === undefined) throw new Error('Nothing was found.')
	return value
}
