import type { LengthUnit } from '../../format/length'
import type { Quarter } from '../../season/season'
import type { Id, MaterialId } from '../../units/id'
import type { RecipeLine } from '../recipe'
import type { DesignMaterial } from '../traits'

export type KeptRecipe = {
	readonly id: Id<'recipe'>
	readonly name: string
	readonly quarter: Quarter
	readonly note: string
	readonly lines: readonly RecipeLine[]
}
export type KeptMaterial = DesignMaterial & { readonly isRetired: boolean }

/** The studio's recipes with what they are made of. */
export type Library = {
	/** By name. */
	readonly recipes: readonly KeptRecipe[]
	/** By name; what is retired is there for the recipes that still name it. */
	readonly materials: ReadonlyMap<MaterialId, KeptMaterial>
	readonly lengths: LengthUnit
}
