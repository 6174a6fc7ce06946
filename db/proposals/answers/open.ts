import type { Viewer } from '@/lib/access/viewer'
import type { NotOffered } from '@/lib/proposal/answer'
import type { Offer } from '@/lib/proposal/offer/offer'
import { type AnswerCommand, decide, type KeptState, type Refusal } from '@/lib/proposal/state'
import type { Hash } from '@/lib/record/hash'
import type { Id, PersonId, ProposalId } from '@/lib/units/id'
import { read, type Tx } from '../../open'
import type { Stamp } from '../../stamp'
import { type Denied, hidden } from '../../viewer'
import { offerIn, type Revision, revisionOf } from '../documents'
import { type Found, findProposal } from '../find'

export type Answering = {
	readonly proposal: ProposalId
	readonly revision: Hash
	readonly once: Id<'once'>
	readonly browser: string
	/** Who gave it on the phone, where the studio takes it down. */
	readonly said?: string
}
export type Answered =
	| { readonly ok: true; readonly reference: string }
	| { readonly ok: false; readonly why: Refusal | NotOffered | 'sent before' | 'erased' | 'billed by the agreement' }
	| Denied

/** An answer that may be given, with all that it is given to. */
export type Open = {
	readonly ok: true
	readonly found: Found
	readonly to: KeptState
	readonly revision: Revision
	readonly offer: Offer
	readonly by: PersonId
	/** Whose word it is; beside the studio's own, who said so. */
	readonly word: { readonly is: 'client' } | { readonly is: 'studio'; readonly said: string }
}

/** The client's own answer, or one by phone: what the studio takes down is never the client's, nor the other way round. */
function answerer(viewer: Viewer, said: string | undefined): Pick<Open, 'by' | 'word'> | undefined {
	if (said === undefined) return viewer.is === 'contact' ? { by: viewer.person, word: { is: 'client' } } : undefined
	return viewer.is === 'staff' ? { by: viewer.person, word: { is: 'studio', said } } : undefined
}

export function open(
	tx: Tx,
	viewer: Viewer,
	{ proposal: id, revision, said }: Answering,
	act: AnswerCommand['do'],
	stamp: Stamp,
): Open | Exclude<Answered, { ok: true }> {
	const found = findProposal(tx, viewer, said === undefined ? 'answer the proposal' : 'answer by phone', id, stamp)
	if (!found.ok) return found
	const who = answerer(viewer, said)
	if (who === undefined) return hidden
	const decision = decide(found.state, { do: act, revision })
	if (!decision.ok) return decision
	const standing = revisionOf(tx, id, found.row.revisionNumber)
	const offer = standing && offerIn(tx, standing)
	if (standing === undefined || offer === undefined) return { ok: false, why: 'erased' }
	return { ok: true, found, to: decision.to, revision: standing, offer, ...who }
}

/** Null when the viewer may answer the proposal at all; asked before a form is read, so that a form tells nothing. */
export async function mayAnswer(viewer: Viewer, id: ProposalId, stamp: Stamp): Promise<Denied | null> {
	return read((db) => {
		const found = findProposal(db, viewer, 'answer the proposal', id, stamp)
		return found.ok ? null : found
	})
}
