import { and, asc, eq, inArray, isNull, lte, or, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { moment } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import { type Tx, write } from '../open'
import { type Message, outbox } from '../schema'
import type { Stamp } from '../stamp'
import { denied } from '../viewer'
import { noteLoss } from './note-loss'

export type Leased = {
	readonly id: Id<'mail'>
	readonly message: Message
	readonly person: Id<'person'> | null
	readonly facts: unknown
	readonly tries: number
}

const leaseMs = 60_000

/** What was sent or dropped stays so, whatever a slow sender says later. */
const open = and(isNull(outbox.sentAt), isNull(outbox.droppedAt))

const later = ({ at }: Pick<Stamp, 'at'>, ms: number) => moment(new Date(Date.parse(at) + ms))

/** Takes up to `most` due mails for a minute: a sender that dies in it loses nothing, another takes them up. */
export async function leaseMail(viewer: Viewer, most: number, stamp: Pick<Stamp, 'at'>): Promise<Leased[]> {
	if (denied(viewer, 'send mail', null) !== null) return []
	return write((tx) => {
		const free = or(isNull(outbox.leasedUntil), lte(outbox.leasedUntil, stamp.at))
		const due = tx
			.select()
			.from(outbox)
			.where(and(open, free, lte(outbox.notBefore, stamp.at)))
			.orderBy(asc(outbox.notBefore), asc(outbox.id))
			.limit(most)
			.all()
		const ids = due.map(({ id }) => id)
		const taken = { leasedUntil: later(stamp, leaseMs), tries: sql`${outbox.tries} + 1` }
		if (ids.length > 0) tx.update(outbox).set(taken).where(inArray(outbox.id, ids)).run()
		return due.map(({ id, message, personId, facts, tries }) => ({
			id,
			message,
			person: personId,
			facts: JSON.parse(facts),
			tries: tries + 1,
		}))
	})
}

/** What failed is tried again; what is lost never. */
export type Outcome = 'sent' | 'dropped' | 'failed' | 'lost'

/** Longer and longer between tries, an hour at most. */
const waitMs = (tries: number) => Math.min(3_600_000, 15_000 * 2 ** Math.min(tries, 10))

/** An address that somebody had is kept until it was told, and no longer. */
function forgetAddress(tx: Tx, { id, message }: typeof outbox.$inferSelect): void {
	if (message !== 'address changed') return
	tx.update(outbox)
		.set({ facts: sql`json_remove(${outbox.facts}, '$.address')` })
		.where(eq(outbox.id, id))
		.run()
}

export async function settleMail(
	viewer: Viewer,
	{ id, tries }: Pick<Leased, 'id' | 'tries'>,
	outcome: Outcome,
	stamp: Stamp,
): Promise<void> {
	if (denied(viewer, 'send mail', null) !== null) return
	const { at } = stamp
	const set = {
		sent: { sentAt: at, leasedUntil: null },
		dropped: { droppedAt: at, leasedUntil: null },
		lost: { droppedAt: at, leasedUntil: null },
		failed: { notBefore: later(stamp, waitMs(tries)), leasedUntil: null },
	}[outcome]
	/** Whose lease ran out has nothing to free: another may hold it by now. */
	const held = outcome === 'failed' ? eq(outbox.tries, tries) : undefined
	write((tx) => {
		const settled = tx
			.update(outbox)
			.set(set)
			.where(and(open, held, eq(outbox.id, id)))
			.returning()
			.all()
		if (outcome !== 'failed') for (const mail of settled) forgetAddress(tx, mail)
		if (outcome === 'lost') for (const mail of settled) noteLoss(tx, stamp, viewer, mail)
	})
}
