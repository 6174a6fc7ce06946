import { and, asc, eq, isNull, notInArray, sql } from 'drizzle-orm'
import type { Shelf } from '@/lib/proposal/design/shelf'
import { staysOut } from '@/lib/proposal/state'
import { cents } from '@/lib/units/cents'
import type { MaterialId, ProposalId, SeasonId } from '@/lib/units/id'
import type { Reading } from '../open'
import { draftMaterial, pack, proposal } from '../schema'
import { designMaterials } from './design-materials'

/** By material, the proposals of the season that name it and are still alive. */
function namedIn(db: Reading, season: SeasonId): Shelf['namedBy'] {
	const rows = db
		.select({ material: draftMaterial.materialId, proposal: draftMaterial.proposalId })
		.from(draftMaterial)
		.innerJoin(proposal, eq(proposal.id, draftMaterial.proposalId))
		.where(and(eq(proposal.seasonId, season), notInArray(proposal.state, [...staysOut])))
		.all()
	const by = new Map<MaterialId, Set<ProposalId>>()
	for (const row of rows) by.set(row.material, (by.get(row.material) ?? new Set()).add(row.proposal))
	return by
}

/** Every material with its cheapest pack per unit, freight included, and how often the studio's own has stood outside. */
export function shelfIn(db: Reading, season: SeasonId): Shelf {
	const packs = db
		.select()
		.from(pack)
		.where(isNull(pack.retiredAt))
		.orderBy(sql`${pack.priceCents} * (100 + ${pack.freightPercent}) / ${pack.size} DESC`, asc(pack.id))
		.all()
	const best = new Map(packs.map((each) => [each.materialId, each]))
	const materials = designMaterials(db).map((each) => {
		const sold = best.get(each.id)
		const found = sold ? { size: sold.size, cents: cents(sold.priceCents), freightPercent: sold.freightPercent } : null
		return { ...each, pack: found }
	})
	return { materials, namedBy: namedIn(db, season) }
}
