import type { Dice } from '../../piece'
import { roll, side, times } from './roll'
import { type Spot, spotAt, walk } from './walk'

/** A stem and the twigs that leave it, left and right in turn. */
export type Spray = { readonly main: readonly Spot[]; readonly twigs: readonly (readonly Spot[])[] }

type Plan = {
	readonly lengthCm: number
	readonly twigs: number
	/** Where on the stem the first twig leaves it and where the last. */
	readonly from: number
	readonly to: number
	/** Angle off the stem, in radians; a twig bends back by `back` of it at each of its three legs. */
	readonly out: readonly [low: number, high: number]
	readonly back: number
	/** Of a twig, from the first (0) to the last (1). */
	readonly twigCm: (t: number) => number
	/** The stem bends to either side by this much, in radians at each of its five legs. */
	readonly bend: number
}

export function spray(plan: Plan, dice: Dice): Spray {
	const bend = roll(dice, -plan.bend, plan.bend)
	const main = walk({ from: [0, 0], heading: -bend * 2, lengthCm: plan.lengthCm, legs: 5, turn: () => bend })
	const twigs = times(plan.twigs, (t, index) => {
		const { at, heading } = spotAt(main, plan.from + (plan.to - plan.from) * t)
		const out = side(index) * roll(dice, ...plan.out)
		const lengthCm = plan.twigCm(t) * roll(dice, 0.9, 1.1)
		return walk({ from: at, heading: heading + out, lengthCm, legs: 3, turn: () => -out * plan.back })
	})
	return { main, twigs }
}
