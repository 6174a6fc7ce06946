import { join } from 'node:path'
import Database from 'better-sqlite3'
import { v7 } from 'uuid'

type Row = Record<string, unknown>

const rowsOf = (db: Database.Database, sql: string, ...values: readonly unknown[]): Row[] =>
	db.prepare<unknown[], Row>(sql).all(...values)

function put(db: Database.Database, table: string, row: Row): void {
	const names = Object.keys(row)
	const marks = names.map(() => '?').join(', ')
	db.prepare(`INSERT INTO "${table}" (${names.map((name) => `"${name}"`).join(', ')}) VALUES (${marks})`).run(
		...Object.values(row),
	)
}

/** The same text with each id that it names turned into its copy's. */
const turned = (text: unknown, ids: ReadonlyMap<string, string>): string =>
	[...ids].reduce((all, [from, to]) => all.replaceAll(from, to), String(text))

/** A client like that of `proposal`, with the same places, containers and contacts, and a draft of their own. */
function copyOne(db: Database.Database, proposal: string, name: string): string {
	const [of = {}] = rowsOf(db, 'SELECT * FROM proposal WHERE id = ?', proposal)
	const ids = new Map([
		[proposal, v7()],
		[String(of.client_id), v7()],
	])
	const fresh = (id: unknown) => ids.get(String(id)) ?? ids.set(String(id), v7()).get(String(id))
	const client = fresh(of.client_id)
	for (const row of rowsOf(db, 'SELECT * FROM client WHERE id = ?', of.client_id))
		put(db, 'client', { ...row, id: client, name })
	for (const row of rowsOf(db, 'SELECT * FROM contact WHERE client_id = ? AND ended_at IS NULL', of.client_id))
		put(db, 'contact', { ...row, id: v7(), client_id: client })
	for (const row of rowsOf(db, 'SELECT * FROM place WHERE client_id = ?', of.client_id)) {
		put(db, 'place', { ...row, id: fresh(row.id), client_id: client })
		for (const pot of rowsOf(db, 'SELECT * FROM container WHERE place_id = ?', row.id))
			put(db, 'container', { ...pot, id: fresh(pot.id), place_id: fresh(row.id) })
	}
	put(db, 'proposal', { ...of, id: fresh(proposal), client_id: client, card_key: null })
	for (const row of rowsOf(db, 'SELECT * FROM draft WHERE proposal_id = ?', proposal))
		put(db, 'draft', { ...row, proposal_id: fresh(proposal), document: turned(row.document, ids), version: 1 })
	for (const row of rowsOf(db, 'SELECT * FROM draft_material WHERE proposal_id = ?', proposal))
		put(db, 'draft_material', { ...row, proposal_id: fresh(proposal) })
	return String(fresh(proposal))
}

/** As many drafts as that many clients have, each ready as the one that they are copied from. @returns their ids */
export function manyDrafts(folder: string, from: string, count: number): string[] {
	const db = new Database(join(folder, 'studio.db'))
	const copy = db.transaction(() =>
		Array.from({ length: count }, (_, n) => copyOne(db, from, `Shop ${String(n + 1).padStart(3, '0')}`)),
	)
	const made = copy()
	db.close()
	return made
}
