import { and, eq, inArray } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Draft } from '@/lib/proposal/draft'
import type { Facts } from '@/lib/proposal/facts'
import type { State } from '@/lib/proposal/state'
import { hexesOf } from '@/lib/season/standing'
import { unweighed, weigh } from '@/lib/season/weigh'
import type { Moment } from '@/lib/units/day'
import type { MaterialId, PersonId, ProposalId } from '@/lib/units/id'
import { read, type Tx, write } from '../open'
import { draft, draftMaterial, material, proposal } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, hidden } from '../viewer'
import { draftOf } from './documents'
import { factsFor } from './facts'
import { findProposal } from './find'

export type KeptDraft = {
	readonly version: number
	readonly draft: Draft
	readonly state: State
	readonly client: string
}

export async function readDraft(
	viewer: Viewer,
	id: ProposalId,
	stamp: Pick<Stamp, 'at'>,
): Promise<KeptDraft | undefined> {
	return read((db) => {
		const found = findProposal(db, viewer, 'see the draft', id, stamp)
		return found.ok ? { ...draftOf(db, id), state: found.state, client: found.client.name } : undefined
	})
}

function materialsOf({ options, extras }: Draft): MaterialId[] {
	const lines = [
		...options.flatMap(({ pots }) => pots.flatMap((pot) => pot.lines)),
		...extras.flatMap((extra) => extra.lines),
	]
	return [...new Set(lines.map(({ material: of }) => of))]
}

/** Keeps which materials the draft names, those that exist. */
function keepMaterials(tx: Tx, id: ProposalId, document: Draft): void {
	tx.delete(draftMaterial).where(eq(draftMaterial.proposalId, id)).run()
	const named = materialsOf(document)
	const known = tx.select({ id: material.id }).from(material).where(inArray(material.id, named)).all()
	if (known.length === 0) return
	tx.insert(draftMaterial)
		.values(known.map((each) => ({ proposalId: id, materialId: each.id })))
		.run()
}

/** While nothing is out, the ledger shows what the draft holds and comes to. */
export function showInLedger(tx: Tx, next: Draft, facts: Facts): void {
	const [first, ...more] = next.options
	const shown = {
		...(weigh(next, facts) ?? unweighed),
		palette: first !== undefined && more.length === 0 ? first.name : '',
		paletteCount: first === undefined ? 0 : more.length + 1,
		paletteHexes: first === undefined ? '' : hexesOf(first),
	}
	tx.update(proposal)
		.set(shown)
		.where(and(eq(proposal.id, facts.proposal), eq(proposal.revisionNumber, 0)))
		.run()
}

export type Saved =
	| { readonly ok: true; readonly version: number }
	| { readonly ok: false; readonly why: 'saved elsewhere'; readonly version: number; readonly theirs: Draft }
	| Denied

export type Saving = { readonly proposal: ProposalId; readonly version: number; readonly draft: Draft }

/** The next version of a draft, with what the shelf knows of it; whoever calls has looked who may. */
export function keepDraft(
	tx: Tx,
	id: ProposalId,
	version: number,
	next: Draft,
	{ at, by }: { at: Moment; by: PersonId },
) {
	const row = { version, document: JSON.stringify(next), updatedAt: at, updatedBy: by }
	tx.update(draft).set(row).where(eq(draft.proposalId, id)).run()
	keepMaterials(tx, id, next)
}

/** Saves over the version that was read, and over no other: what was saved elsewhere meanwhile is handed back. */
export async function saveDraft(
	viewer: Viewer,
	{ proposal: id, version, draft: next }: Saving,
	stamp: Stamp,
): Promise<Saved> {
	return write((tx): Saved => {
		const found = findProposal(tx, viewer, 'change the draft', id, stamp)
		if (!found.ok) return found
		if (viewer.is !== 'staff') return hidden
		const kept = draftOf(tx, id)
		if (kept.version !== version)
			return { ok: false, why: 'saved elsewhere', version: kept.version, theirs: kept.draft }
		keepDraft(tx, id, version + 1, next, { at: stamp.at, by: viewer.person })
		if (found.row.revisionNumber === 0) showInLedger(tx, next, factsFor(tx, found, viewer.person))
		return { ok: true, version: version + 1 }
	})
}
