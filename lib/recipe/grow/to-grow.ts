import type { MaterialId } from '../../units/id'
import type { RecipeLine } from '../recipe'
import type { DesignMaterial } from '../traits'

export type Materials = ReadonlyMap<MaterialId, DesignMaterial>

/** A line to be grown. `kept` is a count that the designer has fixed: it stays, and what is held by it follows it. */
export type ToGrow = RecipeLine & { readonly kept?: number }

/** Lines with their places in the recipe. */
export type Numbered = { readonly line: ToGrow; readonly at: number }

/** What is known of the counts so far, by place. */
export type Counts = ReadonlyMap<number, number>
