import type { LengthUnit } from '../../format/length'
import type { Scene } from '../../picture/scene'
import { lookOf } from '../../proposal/drawn'
import type { Quarter } from '../../season/season'
import { hex } from '../../units/hex'
import type { Materials } from '../grow/to-grow'
import type { RecipeLine } from '../recipe'
import { plannedIn } from './grown-to'
import { type PotName, pots, potWords } from './pots'

type Written = { readonly quarter: Quarter; readonly lines: readonly RecipeLine[] }

/** A plain wall and a plain pot: the recipe alone is looked at. */
const wall = { kind: 'stucco', hex: hex('#d3d6cf') } as const
const colour = hex('#45494b')

/** A recipe grown to one of the pots, as it is drawn. */
export function recipeScene({ quarter, lines }: Written, name: PotName, materials: Materials, unit: LengthUnit): Scene {
	const { stands, ...vessel } = pots[name]
	const drawn = plannedIn(name, lines, materials).map(({ material, role, count }) => {
		const { pieces, ...look } = lookOf(material, count)
		return { ...look, name: material.name, role, hex: material.hex, count: pieces }
	})
	const pot = { name: potWords(name, unit), vessel, colour, stands, sillToGlassCm: null, lines: drawn }
	const madeOf = name === 'box' ? 'wood' : 'resin'
	return { quarter, hour: 'day', wall, door: null, measure: 'none', pots: [{ ...pot, madeOf }] }
}
