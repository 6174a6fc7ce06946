import { grow } from '../grow/grow'
import type { Materials } from '../grow/to-grow'
import { standingCm } from '../height'
import { type Planned, planned } from '../planned'
import type { RecipeLine } from '../recipe'
import { type PotName, potNames, pots } from './pots'

export type GrownTo = {
	readonly pot: PotName
	/** Of each line, in its order and its material's unit. */
	readonly counts: readonly number[]
	/** How far the tallest rises above the rim; null where no thriller has a length. */
	readonly tallestCm: number | null
}

/** A recipe's lines as they stand in one of the pots. */
export const plannedIn = (name: PotName, lines: readonly RecipeLine[], materials: Materials): Planned[] =>
	planned(grow(lines, pots[name], materials), materials)

function tallestCm(name: PotName, lines: readonly Planned[]): number | null {
	const pot = { ...pots[name], sillToGlassCm: null }
	const heights = lines
		.filter(({ role }) => role === 'thriller')
		.flatMap(({ material }) => standingCm(material, pot) ?? [])
	return heights.length === 0 ? null : Math.max(...heights)
}

/** What a recipe comes to in each of the pots that it is looked at in. */
export const grownTo = (lines: readonly RecipeLine[], materials: Materials): GrownTo[] =>
	potNames.map((pot) => ({
		pot,
		counts: grow(lines, pots[pot], materials).map(({ count }) => count),
		tallestCm: tallestCm(pot, plannedIn(pot, lines, materials)),
	}))
