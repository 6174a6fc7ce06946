import { cpSync, mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { closeSideFile } from '@/db/house/side-file'
import { closeDatabase } from '@/db/open'
import { start } from '@/db/start/start'
import { type Seeded, seed } from '@/demo/seed'
import { day } from '@/lib/units/day'

export type Studio = { readonly folder: string; readonly cast: Seeded }

/** A seeded studio in a folder of its own, closed, so that a process may be let loose on a copy of it. */
export async function seededStudio(): Promise<Studio> {
	const folder = mkdtempSync(join(tmpdir(), 'doorsill-faults-'))
	start(folder)
	const cast = await seed({ today: day('2026-10-06') })
	closeDatabase()
	closeSideFile()
	return { folder, cast }
}

export function copyOf({ folder }: Studio): string {
	const copy = mkdtempSync(join(tmpdir(), 'doorsill-fault-'))
	cpSync(folder, copy, { recursive: true })
	return copy
}

/** What has to agree with what, whatever happened. */
export function counts(folder: string) {
	const db = new Database(join(folder, 'studio.db'))
	const one = (sql: string) => Number(db.prepare(sql).pluck().get())
	const found = {
		integrity: String(db.pragma('integrity_check', { simple: true })),
		lastSeq: one('SELECT max(seq) FROM event'),
		published: one("SELECT count(*) FROM event WHERE act = 'proposal published'"),
		revisions: one('SELECT count(*) FROM revision'),
		approved: one("SELECT count(*) FROM event WHERE act = 'proposal approved'"),
		approvals: one("SELECT count(*) FROM answer WHERE kind = 'approval'"),
		receipts: one("SELECT count(*) FROM outbox WHERE message = 'approved'"),
		/** One for each contact of the client that approved. */
		dueReceipts: one(
			"SELECT count(*) FROM answer JOIN revision ON revision.id = answer.revision_id JOIN proposal ON proposal.id = revision.proposal_id JOIN contact ON contact.client_id = proposal.client_id AND contact.ended_at IS NULL WHERE answer.kind = 'approval'",
		),
		orphans: one('SELECT count(*) FROM revision WHERE offer_hash NOT IN (SELECT hash FROM sealed_text)'),
	}
	db.close()
	return found
}
