import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Moment } from '@/lib/units/day'
import type { Id, ProposalId } from '@/lib/units/id'
import { type Tx, write } from '../open'
import { dropReminders } from '../outbox/drop-reminders'
import { enqueue } from '../outbox/enqueue'
import { append } from '../record/append'
import { isFirst } from '../record/once'
import { proposal } from '../schema'
import type { Stamp } from '../stamp'
import type { Denied } from '../viewer'
import { findProposal } from './find'
import { contactsOf } from './recipients'

export const twoDaysMs = 2 * 86_400_000

const isLately = (last: Moment | null, { at }: Pick<Stamp, 'at'>): last is Moment =>
	last !== null && Date.parse(at) - Date.parse(last) < twoDaysMs

export type Reminding = { readonly proposal: ProposalId; readonly again: boolean; readonly once: Id<'once'> }
export type Reminded =
	| { readonly ok: true }
	| { readonly ok: false; readonly why: 'reminded lately'; readonly at: Moment }
	| { readonly ok: false; readonly why: 'not waiting for them' | 'sent before' }
	| Denied

/** The reminder itself: its line of the record, and a mail to each who may approve. */
export function sendReminder(
	tx: Tx,
	viewer: Viewer,
	{ id, clientId: client, revisionNumber: number }: typeof proposal.$inferSelect,
	stamp: Stamp,
): void {
	tx.update(proposal).set({ remindedAt: stamp.at, undeliveredAt: null }).where(eq(proposal.id, id)).run()
	append(tx, stamp, viewer, { act: 'client reminded', object: `proposal ${id}`, client, facts: { number } })
	dropReminders(tx, id, stamp)
	for (const person of contactsOf(tx, client, { whoMayApprove: true }))
		enqueue(tx, stamp, { message: 'reminder', person, facts: { proposal: id, number } })
}

/** Reminds who may approve. Within two days of the last time only when `again` is said. */
export async function remind(
	viewer: Viewer,
	{ proposal: id, again, once }: Reminding,
	stamp: Stamp,
): Promise<Reminded> {
	return write((tx): Reminded => {
		const found = findProposal(tx, viewer, 'remind', id, stamp)
		if (!found.ok) return found
		if (found.state.is !== 'waiting for an answer') return { ok: false, why: 'not waiting for them' }
		const { remindedAt: last } = found.row
		if (isLately(last, stamp) && !again) return { ok: false, why: 'reminded lately', at: last }
		if (!isFirst(tx, stamp, viewer, once)) return { ok: false, why: 'sent before' }
		sendReminder(tx, viewer, found.row, stamp)
		return { ok: true }
	})
}
