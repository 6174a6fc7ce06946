import { randomBytes } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { v7 } from 'uuid'
import { databaseFile, openDatabase } from '@/db/open'
import { approve } from '@/db/proposals/answers/approve'
import { readDraft } from '@/db/proposals/draft'
import { publish } from '@/db/proposals/publish'
import { steer } from '@/db/proposals/steer'
import type { Stamp } from '@/db/stamp'
import { viewerOf } from '@/db/viewer'
import type { Seeded } from '@/demo/seed'
import { id } from '@/lib/units/id'

/** Publishes, approves and opens again, over and over, and says after each commit how far the record is. */
const [, , folder = ''] = process.argv
const cast: Seeded = JSON.parse(readFileSync(join(folder, 'cast.json'), 'utf8'))
openDatabase(folder)
const stamp = (): Stamp => ({ at: cast.now, id: <Of extends string>() => id<Of>(v7()), salt: () => randomBytes(16) })
const reader = new Database(databaseFile(folder), { readonly: true })
const last = reader.prepare('SELECT max(seq) FROM event').pluck()
const say = () => process.stdout.write(`${String(last.get())}\n`)

const designer = await viewerOf(cast.people.designer.id)
const approver = await viewerOf(cast.people.bicyclesApprover.id)
const proposal = cast.proposals.bicycles
const reopen = () => steer(designer, { proposal, step: 'reopen', reason: '', once: id<'once'>(v7()) }, stamp())
// Killed last time between an approval and the next turn, it begins with one that stands.
await reopen()
for (;;) {
	const draft = await readDraft(designer, proposal, stamp())
	const out = await publish(designer, { proposal, version: draft?.version ?? 0, once: id<'once'>(v7()) }, stamp())
	if (!out.ok) throw new Error(`busy: ${out.why}`)
	say()
	const option = draft?.draft.options[0]?.key ?? ''
	const wanted = { option, places: {}, extras: [], leftOut: [], purchaseOrder: '', browser: '' }
	const yes = await approve(approver, { proposal, revision: out.hash, once: id<'once'>(v7()), ...wanted }, stamp())
	if (!yes.ok) throw new Error(`busy: ${yes.why}`)
	say()
	await reopen()
	say()
}
