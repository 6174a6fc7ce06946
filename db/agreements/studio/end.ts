import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { type Ending, type EndingRefusal, endingRefusal } from '@/lib/agreement/ending/ending'
import { remainsAt } from '@/lib/agreement/ending/remains'
import { endingInWords } from '@/lib/agreement/ending/told'
import { decide, type Refusal } from '@/lib/agreement/state'
import type { Id } from '@/lib/units/id'
import { paidFor } from '../../money/paid-for'
import { type Reading, read, type Tx, write } from '../../open'
import { enqueue } from '../../outbox/enqueue'
import { contactsOf } from '../../proposals/recipients'
import { append } from '../../record/append'
import { isFirst } from '../../record/once'
import { seal } from '../../record/seal'
import { agreement } from '../../schema'
import type { Stamp } from '../../stamp'
import type { Denied } from '../../viewer'
import { documentIn } from '../documents'
import { termsOf } from '../draft'
import { type FoundAgreement, findAgreement } from '../find'
import { happenedOf } from './happened'

export type Ended =
	| { readonly ok: true }
	| { readonly ok: false; readonly why: Refusal | EndingRefusal | 'sent before' }
	| Denied

type Closing = { readonly act: 'agreement taken back' | 'agreement ended'; readonly sealed?: ReturnType<typeof seal> }

/** The line of the record, and a mail to each who may sign. */
function tell(tx: Tx, viewer: Viewer, { row }: FoundAgreement, { act, sealed }: Closing, stamp: Stamp): void {
	const { id, clientId: client, number } = row
	append(tx, stamp, viewer, { act, object: `agreement ${id}`, client, facts: { number }, sealed: sealed ?? null })
	for (const person of contactsOf(tx, client, { whoMayApprove: true }))
		enqueue(tx, stamp, { message: act, person, facts: { agreement: id, number } })
}

export type TakingBack = { readonly agreement: Id<'agreement'>; readonly once: Id<'once'> }

/** Takes back one that nobody has signed. */
export async function takeBackAgreement(
	viewer: Viewer,
	{ agreement: id, once }: TakingBack,
	stamp: Stamp,
): Promise<Ended> {
	return write((tx): Ended => {
		const found = findAgreement(tx, viewer, 'change agreements', id, stamp)
		if (!found.ok) return found
		const to = decide(found.state, { do: 'end' })
		if (!to.ok) return to
		if (to.inForce !== null) return { ok: false, why: 'already signed' }
		if (!isFirst(tx, stamp, viewer, once)) return { ok: false, why: 'sent before' }
		tx.update(agreement).set({ state: to.to }).where(eq(agreement.id, id)).run()
		tell(tx, viewer, found, { act: 'agreement taken back' }, stamp)
		return { ok: true }
	})
}

/** The document that both have signed and that still holds. */
function inForceOf(db: Reading, { state }: FoundAgreement) {
	const hash = state.is === 'drafting' ? null : state.inForce
	return hash === null ? undefined : { hash, document: documentIn(db, hash) }
}

export type EndingIt = TakingBack & { readonly ending: Ending }

/** Ends early one that both have signed, on its day, whatever else waits for a signature. */
export async function endAgreement(
	viewer: Viewer,
	{ agreement: id, ending, once }: EndingIt,
	stamp: Stamp,
): Promise<Ended> {
	return write((tx): Ended => {
		const found = findAgreement(tx, viewer, 'change agreements', id, stamp)
		if (!found.ok) return found
		const to = decide(found.state, { do: 'end' })
		if (!to.ok) return to
		const { document } = inForceOf(tx, found) ?? {}
		if (document === undefined) return { ok: false, why: 'nothing to end' }
		const no = endingRefusal(ending, document, found.today)
		if (no !== null) return { ok: false, why: no }
		if (!isFirst(tx, stamp, viewer, once)) return { ok: false, why: 'sent before' }
		const sealed = seal(tx, stamp, found.row.clientId, ending)
		tx.update(agreement).set({ state: to.to, holdsUntil: ending.on, ending: sealed }).where(eq(agreement.id, id)).run()
		tell(tx, viewer, found, { act: 'agreement ended', sealed }, stamp)
		return { ok: true }
	})
}

/** What an ending would leave, in sentences, by what was paid until now; undefined where nothing holds or the day does not suit it. */
export async function endingOutlook(
	viewer: Viewer,
	id: Id<'agreement'>,
	ending: Ending,
	stamp: Pick<Stamp, 'at'>,
): Promise<readonly string[] | undefined> {
	return read((db) => {
		const found = findAgreement(db, viewer, 'change agreements', id, stamp)
		if (!found.ok) return undefined
		const { hash, document } = inForceOf(db, found) ?? {}
		if (hash === undefined || document === undefined || endingRefusal(ending, document, found.today) !== null)
			return undefined
		const happened = happenedOf(db, { client: found.row.clientId, document: hash, timeZone: found.studio.timeZone })
		const remains = remainsAt(document, happened, {
			...{ on: ending.on, paidCents: paidFor(db, found.row.clientId, id) },
		})
		return endingInWords(ending, document, remains, termsOf(db, id).terms.said.noticeDays)
	})
}
