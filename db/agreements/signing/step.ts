import type { Viewer } from '@/lib/access/viewer'
import type { AgreementDocument } from '@/lib/agreement/document/document'
import type { SigningRefusal } from '@/lib/agreement/signing/told'
import { type Decision, decide } from '@/lib/agreement/state'
import type { Hash } from '@/lib/record/hash'
import type { Id, PersonId } from '@/lib/units/id'
import { type Reading, read } from '../../open'
import type { Stamp } from '../../stamp'
import { type Denied, hidden } from '../../viewer'
import { documentIn } from '../documents'
import { type FoundAgreement, findAgreement } from '../find'

export type Answering = {
	readonly agreement: Id<'agreement'>
	/** That was read: the one that was issued last, or nothing happens. */
	readonly document: Hash
	readonly once: Id<'once'>
}
export type Refused = { readonly ok: false; readonly why: SigningRefusal }

/** An agreement that may be answered, with all that the answer is given to. */
export type Step = {
	readonly ok: true
	readonly found: FoundAgreement
	readonly to: Extract<Decision, { ok: true }>
	readonly document: AgreementDocument
	readonly person: PersonId
}

export function stepTo(
	db: Reading,
	viewer: Viewer,
	{ agreement, document: hash }: Pick<Answering, 'agreement' | 'document'>,
	act: 'sign' | 'decline',
	stamp: Pick<Stamp, 'at'>,
): Step | Refused | Denied {
	const found = findAgreement(db, viewer, 'sign the agreement', agreement, stamp)
	if (!found.ok) return found
	if (viewer.is !== 'contact') return hidden
	const to = decide(found.state, { do: act, document: hash })
	if (!to.ok) return to
	const document = documentIn(db, hash)
	if (document === undefined) return { ok: false, why: 'erased' }
	return { ok: true, found, to, document, person: viewer.person }
}

/** Null when the viewer may sign the agreement at all; asked before a form is read, so that a form tells nothing. */
export async function maySign(viewer: Viewer, id: Id<'agreement'>, stamp: Pick<Stamp, 'at'>): Promise<Denied | null> {
	return read((db) => {
		const found = findAgreement(db, viewer, 'sign the agreement', id, stamp)
		return found.ok ? null : found
	})
}
