import type { WallMaterial } from '../../container/card'
import type { Hex } from '../../units/hex'
import { linear, type Stop } from '../pen/gradient'
import type { Pen } from '../pen/pen'
import { shade } from '../pen/shade'

/** How light runs over a round side from left to right, as steps of lightness: light comes from the upper left. */
const round: Record<WallMaterial, readonly (readonly [at: number, by: number])[]> = {
	metal: [
		[0, -0.09],
		[0.1, 0],
		[0.2, 0.17],
		[0.27, 0.19],
		[0.38, 0.03],
		[0.66, -0.05],
		[0.9, -0.15],
		[1, -0.07],
	],
	resin: [
		[0, -0.04],
		[0.26, 0.07],
		[0.58, -0.01],
		[1, -0.14],
	],
	wood: [
		[0, -0.06],
		[0.28, 0.05],
		[0.6, -0.02],
		[1, -0.15],
	],
	terracotta: [
		[0, -0.04],
		[0.26, 0.065],
		[0.6, -0.02],
		[1, -0.15],
	],
	'cast stone': [
		[0, -0.04],
		[0.24, 0.055],
		[0.62, -0.05],
		[1, -0.16],
	],
}

const flat: Record<WallMaterial, readonly (readonly [at: number, by: number])[]> = {
	metal: [
		[0, 0.09],
		[0.18, 0.13],
		[0.42, 0.02],
		[0.8, -0.05],
		[1, -0.02],
	],
	resin: [
		[0, 0.04],
		[1, -0.04],
	],
	wood: [
		[0, 0.03],
		[1, -0.04],
	],
	terracotta: [
		[0, 0.035],
		[1, -0.045],
	],
	'cast stone': [
		[0, 0.035],
		[1, -0.05],
	],
}

export type Finish = {
	/** The side, and what stands a little lighter or darker than it. */
	readonly side: (by?: number) => string
	readonly plain: (by: number) => Hex
}

export function finishOf(madeOf: WallMaterial, colour: Hex, isRound: boolean, { defs }: Pen): Finish {
	const steps = (isRound ? round : flat)[madeOf]
	const plain = (by: number) => shade(colour, by)
	const side = (by = 0) => {
		const stops = steps.map(([at, step]): Stop => [at, plain(step + by)])
		return linear(defs, isRound ? 'across' : 'slanting', stops)
	}
	return { side, plain }
}
