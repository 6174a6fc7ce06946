import type { LibraryRecipe } from '../../proposal/design/propose'
import { standInsFor } from '../../proposal/start/stand-ins'
import { usualInstallMonth } from '../../recipe/almanac/months'
import type { DesignMaterial } from '../../recipe/traits'
import type { Quarter } from '../season'
import type { Collection } from './collection'

type Shelved = DesignMaterial & { readonly isRetired: boolean }

/** Which materials of its recipes and extras are no longer taken, and what stands in for each. */
export function collectionStandIns(
	{ designs, extras }: Collection,
	recipes: readonly LibraryRecipe[],
	materials: readonly Shelved[],
	quarter: Quarter,
): readonly string[] {
	const used = new Set<string | null>(designs.flatMap((design) => Object.values(design.recipes)))
	const lines = [...recipes.filter(({ id }) => used.has(id)), ...extras].flatMap((each) =>
		each.lines.map(({ material }) => material),
	)
	const shelf = new Map(materials.map((each) => [each.id, each]))
	const month = usualInstallMonth(quarter)
	return standInsFor(lines, shelf, { month, zone: null, light: 'part', lengths: 'cm' }).told
}
