import { expect } from 'vitest'
import { stranger } from './studio'

type Rows = Readonly<Record<string, readonly string[]>>

const plain = (value: unknown) => (Buffer.isBuffer(value) ? value.toString('hex') : value)

/** Every row of every table of ours, as JSON, in one order. */
export function rowsIn(folder: string): Record<string, string[]> {
	return stranger(folder, (sqlite) => {
		const tables = "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE '\\_\\_%' ESCAPE '\\'"
		const rows = (table: string) =>
			sqlite
				.prepare<[], unknown[]>(`SELECT * FROM "${table}"`)
				.raw()
				.all()
				.map((row) => JSON.stringify(row.map(plain)))
				.toSorted()
		const names = sqlite.prepare<[], string>(tables).pluck().all()
		return Object.fromEntries(names.map((name) => [name, rows(name)]))
	})
}

function moreIn(rows: readonly string[], than: readonly string[]): number {
	const known = new Set(than)
	return rows.filter((row) => !known.has(row)).length
}

/** What an act did to the file, table by table: "+1" a row more, "~1" a row altered, "-1" a row less; its answer beside it. */
export async function changesOf<T>(
	folder: string,
	act: () => Promise<T>,
): Promise<{ said: T; did: Record<string, string> }> {
	const before: Rows = rowsIn(folder)
	const said = await act()
	const after: Rows = rowsIn(folder)
	const did: Record<string, string> = {}
	for (const [table, rows] of Object.entries(after)) {
		const was = before[table] ?? []
		const added = rows.length - was.length
		const altered = Math.min(moreIn(rows, was), moreIn(was, rows))
		const signs = [added > 0 ? `+${added}` : '', altered > 0 ? `~${altered}` : '', added < 0 ? String(added) : '']
		const told = signs.filter(Boolean).join(' ')
		if (told !== '') did[table] = told
	}
	return { said, did }
}

/** What an act said that is to leave every row of every table as it was. */
export async function refused<T>(folder: string, act: () => Promise<T>): Promise<T> {
	const { said, did } = await changesOf(folder, act)
	expect(did).toEqual({})
	return said
}
