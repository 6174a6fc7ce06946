import { heldAnew } from '../../recipe/held-anew'
import type { Wanted } from '../../recipe/library/substitutes'
import type { RecipeLine } from '../../recipe/recipe'
import type { Facts } from '../facts'
import { standInsFor, withStandIns } from './stand-ins'

export type SoundRecipe = { readonly recipe: readonly RecipeLine[]; readonly told: readonly string[] }

/** A recipe of nothing but what is taken; what is held follows what stands in. */
export function soundRecipe(lines: readonly RecipeLine[], materials: Facts['materials'], wanted: Wanted): SoundRecipe {
	const { standIns, told } = standInsFor(
		lines.map(({ material }) => material),
		materials,
		wanted,
	)
	const recipe = withStandIns(lines, standIns).map((line) => ({ ...line, grows: heldAnew(line.grows, standIns) }))
	return { recipe, told }
}
