import { and, eq, isNull } from 'drizzle-orm'
import { usualForm } from '@/lib/recipe/look'
import type { Hazard } from '@/lib/recipe/material'
import { type DesignMaterial, lightsOf, monthsFrom } from '@/lib/recipe/traits'
import type { Reading } from '../open'
import { material, stock, trait } from '../schema'

type Row = typeof material.$inferSelect
type Traits = typeof trait.$inferSelect | null

function hazardsOf({ isPoisonousToPeople, isPoisonousToPets, hasSmallParts }: Row): Hazard[] {
	const found: Hazard[] = []
	if (isPoisonousToPeople) found.push('poisonous to people')
	if (isPoisonousToPets) found.push('poisonous to pets')
	if (hasSmallParts) found.push('small parts')
	return found
}

/** A material that nobody has described yet looks like others of its role, and is taken to do well anywhere at any time. */
function traitsOf(row: Row, traits: Traits) {
	if (traits === null) {
		const unknown = {
			lengthCm: null,
			acrossCm: null,
			secondHex: null,
			zone: null,
			spacingCm: null,
			rootBallLitres: null,
		}
		const all = { had: monthsFrom(1, 12), lasts: monthsFrom(1, 12), wants: [], regulated: '' }
		return { ...unknown, ...all, form: usualForm(row.role), kgEach: null, watts: null, mostEndToEnd: null }
	}
	const { materialId: _, hadFrom, hadTo, lastsFrom, lastsTo, needs, ...rest } = traits
	return { ...rest, had: monthsFrom(hadFrom, hadTo), lasts: monthsFrom(lastsFrom, lastsTo), wants: lightsOf(needs) }
}

export type Held = DesignMaterial & { readonly usesBefore: number; readonly isRetired: boolean }

/** Every material as a design sees it: no price, no supplier. */
export function designMaterials(db: Reading): Held[] {
	return db
		.select({ material, trait, held: stock })
		.from(material)
		.leftJoin(trait, eq(trait.materialId, material.id))
		.leftJoin(stock, and(eq(stock.materialId, material.id), isNull(stock.clientId)))
		.all()
		.map(({ material: row, trait: traits, held }) => {
			const { id, name, kind, piece, role, unit, piecesPerUnit, hex } = row
			const stored = { inStock: held?.quantity ?? 0, usesBefore: held?.usesBefore ?? 0 }
			const own = { id, name, kind, piece, role, unit, piecesPerUnit, hex, hazards: hazardsOf(row) }
			return { ...own, ...traitsOf(row, traits), ...stored, isRetired: row.retiredAt !== null }
		})
}
