import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { decide, type KeptState, type Refusal } from '@/lib/proposal/state'
import type { RecordedAct } from '@/lib/record/acts'
import type { Hash } from '@/lib/record/hash'
import { type Cents, cents } from '@/lib/units/cents'
import type { Id, ProposalId } from '@/lib/units/id'
import { type Tx, write } from '../open'
import { enqueue } from '../outbox/enqueue'
import { append } from '../record/append'
import { isFirst } from '../record/once'
import { seal } from '../record/seal'
import { type Message, proposal } from '../schema'
import type { Stamp } from '../stamp'
import type { Denied } from '../viewer'
import { type Found, findProposal } from './find'
import { standingAnswer } from './read-offer'
import { contactsOf } from './recipients'

export type Step = 'withdraw' | 'reopen' | 'cancel' | 'install'

const recorded: Record<Step, RecordedAct> = {
	withdraw: 'proposal withdrawn',
	reopen: 'proposal reopened',
	cancel: 'proposal cancelled',
	install: 'proposal installed',
}

type Taken = {
	readonly step: Step
	readonly to: KeptState
	readonly sealed?: Hash | null
	/** Of a cancelled one. */
	readonly remains?: Cents | null
}

/** Writes a step of the studio's own that `decide` has let through, with its line of the record. */
export function takeStep(
	tx: Tx,
	stamp: Stamp,
	viewer: Viewer,
	{ row }: Found,
	{ step, to, sealed = null, remains = null }: Taken,
): void {
	tx.update(proposal).set({ state: to, remainsCents: remains }).where(eq(proposal.id, row.id)).run()
	const facts = remains === null ? {} : { remains }
	append(tx, stamp, viewer, { act: recorded[step], object: `proposal ${row.id}`, client: row.clientId, facts, sealed })
}

/** What the client hears of it; nothing of an install, which they see. */
const told: Record<Step, Message | null> = {
	withdraw: 'taken back',
	reopen: 'opened again',
	cancel: 'cancelled',
	install: null,
}

export type Steering = {
	readonly proposal: ProposalId
	readonly step: Step
	readonly reason: string
	/** What remains due of one that is cancelled, tax included: nothing where nothing is said. */
	readonly remains?: Cents | null
	readonly once: Id<'once'>
}
export type Steered = { readonly ok: true } | { readonly ok: false; readonly why: Refusal | 'sent before' } | Denied

function tell(tx: Tx, stamp: Stamp, { row }: Found, step: Step): void {
	const message = told[step]
	if (message === null) return
	const facts = { proposal: row.id, number: row.revisionNumber }
	for (const person of contactsOf(tx, row.clientId, { whoMayApprove: true }))
		enqueue(tx, stamp, { message, person, facts })
}

/** A step of the studio's own: taking a proposal back, opening an approval again, cancelling it, having installed it. */
export async function steer(
	viewer: Viewer,
	{ proposal: id, step, reason, remains, once }: Steering,
	stamp: Stamp,
): Promise<Steered> {
	return write((tx): Steered => {
		const found = findProposal(tx, viewer, 'steer the proposal', id, stamp)
		if (!found.ok) return found
		const decision = decide(found.state, { do: step })
		if (!decision.ok) return decision
		const due = step === 'cancel' ? (remains ?? cents(0)) : null
		if (due !== null && due > (standingAnswer(tx, found)?.totalCents ?? 0))
			return { ok: false, why: 'more than was approved' }
		if (!isFirst(tx, stamp, viewer, once)) return { ok: false, why: 'sent before' }
		const sealed = reason === '' ? null : seal(tx, stamp, found.row.clientId, { reason })
		takeStep(tx, stamp, viewer, found, { step, to: decision.to, sealed, remains: due })
		tell(tx, stamp, found, step)
		return { ok: true }
	})
}
