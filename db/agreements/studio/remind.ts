import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { isLately } from '@/lib/agreement/studio/lately'
import { onceFor } from '@/lib/record/once-for'
import type { RemindedAll } from '@/lib/season/reminded-words'
import { dayOf, type Moment } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import { read, type Tx, write } from '../../open'
import { dropAgreementReminders } from '../../outbox/drop-reminders'
import { enqueue } from '../../outbox/enqueue'
import { contactsOf } from '../../proposals/recipients'
import { append } from '../../record/append'
import { isFirst } from '../../record/once'
import { agreement, studio } from '../../schema'
import type { Stamp } from '../../stamp'
import { type Denied, denied } from '../../viewer'
import { type AgreementRow, findAgreement } from '../find'
import { waitingIn } from './list'

export type RemindingSigner = {
	readonly agreement: Id<'agreement'>
	readonly again: boolean
	readonly once: Id<'once'>
}
export type RemindedSigner =
	| { readonly ok: true }
	| { readonly ok: false; readonly why: 'reminded lately'; readonly at: Moment }
	| { readonly ok: false; readonly why: 'not waiting for them' | 'sent before' }
	| Denied

/** The reminder itself: its line of the record, and a mail to each who may sign. */
export function sendAgreementReminder(
	tx: Tx,
	viewer: Viewer,
	{ id, clientId: client, number }: AgreementRow,
	stamp: Stamp,
): void {
	tx.update(agreement).set({ remindedAt: stamp.at, undeliveredAt: null }).where(eq(agreement.id, id)).run()
	append(tx, stamp, viewer, { act: 'client reminded', object: `agreement ${id}`, client, facts: { number } })
	dropAgreementReminders(tx, id, stamp)
	for (const person of contactsOf(tx, client, { whoMayApprove: true }))
		enqueue(tx, stamp, { message: 'agreement reminder', person, facts: { agreement: id, number } })
}

/** Reminds who may sign. Within two days of the last time only when `again` is said. */
export async function remindSigner(
	viewer: Viewer,
	{ agreement: id, again, once }: RemindingSigner,
	stamp: Stamp,
): Promise<RemindedSigner> {
	return write((tx): RemindedSigner => {
		const found = findAgreement(tx, viewer, 'change agreements', id, stamp)
		if (!found.ok) return found
		if (found.state.is !== 'to be signed') return { ok: false, why: 'not waiting for them' }
		const { remindedAt: last } = found.row
		if (isLately(last, stamp.at) && !again) return { ok: false, why: 'reminded lately', at: last }
		if (!isFirst(tx, stamp, viewer, once)) return { ok: false, why: 'sent before' }
		sendAgreementReminder(tx, viewer, found.row, stamp)
		return { ok: true }
	})
}

/** Reminds everybody whose signature is waited for, each in a transaction of its own. Sent twice it reminds nobody twice. */
export async function remindSigners(
	viewer: Viewer,
	{ again, once }: Omit<RemindingSigner, 'agreement'>,
	stamp: Stamp,
): Promise<({ readonly ok: true } & RemindedAll) | Denied> {
	const no = denied(viewer, 'change agreements', null)
	if (no !== null) return no
	const waiting = read((db) => {
		const [house] = db.select().from(studio).all()
		return house === undefined ? [] : waitingIn(db, dayOf(stamp.at, house.timeZone))
	})
	let [reminded, lately] = [0, 0]
	for (const { id } of waiting) {
		const said = await remindSigner(viewer, { agreement: id, again, once: onceFor(once, id) }, stamp)
		if (said.ok) reminded += 1
		else if (said.why === 'reminded lately') lately += 1
	}
	return { ok: true, reminded, lately }
}
