import { and, eq, gt, inArray, isNull, type SQL } from 'drizzle-orm'
import { unweighed, weigh } from '@/lib/season/weigh'
import type { ClientId, MaterialId, SeasonId } from '@/lib/units/id'
import type { Tx } from '../../open'
import { client, draft, draftMaterial, proposal, season, studio } from '../../schema'
import { draftOf } from '../documents'
import { factsFor, type Shared, sharedIn } from '../facts'

const whose = {
	everybody: undefined,
	unweighed: and(isNull(proposal.valueCents), gt(proposal.paletteCount, 0)),
}

/** Which drafts something has changed for. */
export type Touched = keyof typeof whose | { readonly client: ClientId } | { readonly material: MaterialId }

function touchedBy(tx: Tx, touched: Touched): SQL | undefined {
	if (typeof touched === 'string') return whose[touched]
	if ('client' in touched) return eq(proposal.clientId, touched.client)
	const naming = tx
		.select({ id: draftMaterial.proposalId })
		.from(draftMaterial)
		.where(eq(draftMaterial.materialId, touched.material))
	return inArray(proposal.id, naming)
}

/**
 * Keeps the ledger in step when what drafts are priced with changes: rates, a material, a place or its containers. Of
 * what is published the worth is frozen, so drafts alone are gone through.
 */
export function weighDrafts(tx: Tx, touched: Touched): void {
	const rows = tx
		.select({ row: proposal, client, season, studio, savedBy: draft.updatedBy })
		.from(proposal)
		.innerJoin(draft, eq(draft.proposalId, proposal.id))
		.innerJoin(client, and(eq(client.id, proposal.clientId), isNull(client.archivedAt)))
		.innerJoin(season, eq(season.id, proposal.seasonId))
		.innerJoin(studio, eq(studio.id, 1))
		.where(and(eq(proposal.revisionNumber, 0), touchedBy(tx, touched)))
		.all()
	const shared = new Map<SeasonId, Shared>()
	for (const each of rows) {
		const { id, seasonId } = each.row
		const same = shared.get(seasonId) ?? sharedIn(tx, seasonId, each.savedBy)
		shared.set(seasonId, same)
		const weight = weigh(draftOf(tx, id).draft, factsFor(tx, each, each.savedBy, same)) ?? unweighed
		tx.update(proposal).set(weight).where(eq(proposal.id, id)).run()
	}
}
