import { desc } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { RecordedAct } from '@/lib/record/acts'
import { canonical, type Json } from '@/lib/record/canonical'
import { type Entry, entryHash, genesis } from '@/lib/record/chain'
import type { Hash } from '@/lib/record/hash'
import { SentBefore } from '@/lib/record/sent-before'
import type { ClientId } from '@/lib/units/id'
import type { Tx } from '../open'
import { event } from '../schema'
import type { Stamp } from '../stamp'
import { actorOf } from '../viewer'
import { isFirst } from './once'

export type Line = {
	readonly act: RecordedAct
	/** Kind and id: "proposal 0192…". */
	readonly object: string
	readonly client: ClientId | null
	readonly facts?: { readonly [key: string]: Json }
	readonly sealed?: Hash | null
}

/**
 * The next line of the record, chained to the last one inside the transaction that it reports.
 * @throws {SentBefore} when the stamp's form has gone through before
 */
export function append(
	tx: Tx,
	stamp: Stamp,
	viewer: Viewer,
	{ act, object, client, facts = {}, sealed = null }: Line,
): void {
	if (stamp.once !== undefined && !isFirst(tx, stamp, viewer, stamp.once)) throw new SentBefore()
	const [last] = tx.select({ seq: event.seq, hash: event.hash }).from(event).orderBy(desc(event.seq)).limit(1).all()
	const entry: Entry = {
		seq: (last?.seq ?? 0) + 1,
		at: stamp.at,
		actor: actorOf(viewer),
		act,
		object,
		client,
		facts,
		sealed,
		prev: last?.hash ?? genesis,
	}
	const row = { seq: entry.seq, at: entry.at, actor: entry.actor, act, object, sealed, prev: entry.prev }
	tx.insert(event)
		.values({ ...row, clientId: client, facts: canonical(facts), hash: entryHash(entry) })
		.run()
}
