import { and, eq, isNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { emptyTerms, type Terms, termsSchema } from '@/lib/agreement/terms'
import type { ClientId, Id } from '@/lib/units/id'
import { type Reading, type Tx, write } from '../open'
import { append } from '../record/append'
import { agreement, agreementDraft, client } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'
import { findAgreement } from './find'

/** @throws when the agreement has no draft: it gets one when it begins */
export function termsOf(db: Reading, id: Id<'agreement'>): { version: number; terms: Terms } {
	const [row] = db.select().from(agreementDraft).where(eq(agreementDraft.agreementId, id)).all()
	if (row === undefined) throw new Error(`termsOf: ${id} has no draft`)
	return { version: row.version, terms: termsSchema.parse(JSON.parse(row.terms)) }
}

export type BegunAgreement = { readonly ok: true; readonly id: Id<'agreement'> } | Denied
export type Beginning = {
	readonly client: ClientId
	readonly terms?: Terms
	/** The one of the year before. */
	readonly renews?: Id<'agreement'>
}

/** An agreement to be written, inside what else is done. */
export function beginAgreementIn(
	tx: Tx,
	viewer: Viewer,
	{ client: of, terms = emptyTerms, renews }: Beginning,
	stamp: Stamp,
): BegunAgreement {
	const no = denied(viewer, 'change agreements', of)
	if (no !== null || viewer.is !== 'staff') return no ?? hidden
	const [who] = tx
		.select()
		.from(client)
		.where(and(eq(client.id, of), isNull(client.archivedAt)))
		.all()
	if (who === undefined) return hidden
	const id = stamp.id<'agreement'>()
	tx.insert(agreement).values({ id, clientId: of, renews, state: 'drafting', number: 0, createdAt: stamp.at }).run()
	const kept = { terms: JSON.stringify(terms), updatedAt: stamp.at, updatedBy: viewer.person }
	tx.insert(agreementDraft)
		.values({ agreementId: id, version: 1, ...kept })
		.run()
	append(tx, stamp, viewer, {
		act: 'agreement begun',
		object: `agreement ${id}`,
		client: of,
		facts: { renews: renews ?? null },
	})
	return { ok: true, id }
}

export async function beginAgreement(viewer: Viewer, beginning: Beginning, stamp: Stamp): Promise<BegunAgreement> {
	return write((tx) => beginAgreementIn(tx, viewer, beginning, stamp))
}

export type SavingTerms = { readonly agreement: Id<'agreement'>; readonly version: number; readonly terms: Terms }
export type SavedTerms =
	| { readonly ok: true; readonly version: number }
	| { readonly ok: false; readonly why: 'saved elsewhere' | 'ended' }
	| Denied

/** Saves over the version that was read, and over no other. */
export async function saveTerms(
	viewer: Viewer,
	{ agreement: id, version, terms }: SavingTerms,
	stamp: Stamp,
): Promise<SavedTerms> {
	return write((tx): SavedTerms => {
		const found = findAgreement(tx, viewer, 'change agreements', id, stamp)
		if (!found.ok) return found
		if (viewer.is !== 'staff') return hidden
		if (found.state.is === 'ended') return { ok: false, why: 'ended' }
		if (termsOf(tx, id).version !== version) return { ok: false, why: 'saved elsewhere' }
		const kept = { terms: JSON.stringify(terms), updatedAt: stamp.at, updatedBy: viewer.person }
		tx.update(agreementDraft)
			.set({ version: version + 1, ...kept })
			.where(eq(agreementDraft.agreementId, id))
			.run()
		return { ok: true, version: version + 1 }
	})
}
