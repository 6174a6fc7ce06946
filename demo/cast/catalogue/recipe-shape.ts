import type { Holding, Role } from '@/lib/recipe/material'
import type { Quarter } from '@/lib/season/season'
import type { MaterialKey } from './materials'

/** Counts by size of container: small, medium (the reference), large, box, trough. */
export type Counts = readonly [small: number, medium: number, large: number, box: number, trough: number]
export type RecipeLine = readonly [material: MaterialKey, role: Role, holding: Holding, counts: Counts]
export type CastRecipe = {
	readonly name: string
	readonly quarter: Quarter
	readonly note: string
	readonly lines: readonly RecipeLine[]
}
