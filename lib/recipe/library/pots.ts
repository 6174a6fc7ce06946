import { usualWallCm } from '../../container/card'
import { cmPerInch, type LengthUnit, length } from '../../format/length'
import { type Pot, reference } from '../grow/reference'

export const potNames = ['reference', 'wall', 'square', 'box', 'bowl'] as const
export type PotName = (typeof potNames)[number]

const inches = (count: number) => count * cmPerInch

/** What a recipe is looked at in: the container that it is written for, and four that it is often grown to. */
export const pots: Readonly<Record<PotName, Pot>> = {
	reference,
	wall: { ...reference, topCm: inches(16), bottomCm: inches(12), heightCm: inches(16), stands: 'against a wall' },
	square: {
		...reference,
		...{ shape: 'square', topCm: inches(24), topDepthCm: inches(24), heightCm: inches(24) },
		...{ bottomCm: inches(20), bottomDepthCm: inches(20) },
	},
	box: {
		...reference,
		...{ shape: 'window box', topCm: inches(36), topDepthCm: inches(8), heightCm: inches(8) },
		...{ bottomCm: inches(36), bottomDepthCm: inches(8), wallCm: usualWallCm.wood, stands: 'against a wall' },
	},
	bowl: { ...reference, shape: 'bowl', topCm: inches(20), bottomCm: inches(8), heightCm: inches(8) },
}

const nouns: Readonly<Record<PotName, string>> = {
	reference: 'round, all round',
	wall: 'round, by a wall',
	square: 'square, all round',
	box: 'box, by a wall',
	bowl: 'low bowl, all round',
}

/** "18 in round, all round", "36 in × 8 in box, by a wall" */
export function potWords(name: PotName, unit: LengthUnit): string {
	const { topCm, topDepthCm } = pots[name]
	const across = name === 'box' && topDepthCm !== null ? ` × ${length(topDepthCm, unit)}` : ''
	return `${length(topCm, unit)}${across} ${nouns[name]}`
}
