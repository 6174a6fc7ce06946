import type { Dice, DrawPiece } from '../../piece'
import { limb } from '../growth/band'
import { roll, times } from '../growth/roll'
import { size } from '../growth/size'
import { walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill } from '../ink/layer'
import type { Point } from '../ink/point'
import { type Line, polygon } from '../ink/shape'
import { barkBrown, tones } from '../ink/tones'

/** A tier of boughs: its peak at the trunk, its hem at the middle, and half of its spread, in cm. */
type Tier = { readonly peak: number; readonly hem: number; readonly half: number }

/** From the right tip to the left one: tips of boughs that hang, and notches between them. */
const fringe = ({ peak, hem, half }: Tier, from: number, to: number, teeth: number, dice: Dice): Point[] =>
	times(teeth * 2 + 1, (t, index): Point => {
		const u = from + (to - from) * t
		const high = hem - peak
		const lift = Math.abs(u) ** 1.5 * high * 0.34
		if (index % 2 === 1) return [half * u * 0.95, hem - lift - high * roll(dice, 0.12, 0.2)]
		return [
			half * (u + 0.03 * Math.sign(u)) * roll(dice, 0.95, 1.04),
			hem - lift + high * roll(dice, 0, 0.16) * (1.2 - Math.abs(u)),
		]
	})

function tier(of: Tier, dice: Dice): Line {
	const { peak, hem, half } = of
	const at = (u: number, v: number): Point => [half * u * roll(dice, 0.96, 1.05), peak + (hem - peak) * v]
	return polygon([
		[0, peak],
		at(0.2, 0.3),
		at(0.52, 0.52),
		at(0.5, 0.58),
		...fringe(of, 1, -1, 9, dice),
		at(-0.5, 0.58),
		at(-0.52, 0.52),
		at(-0.2, 0.3),
	])
}

/** Where the light falls on a tier: on its left shoulder. */
function gleam(of: Tier, dice: Dice): Line {
	const { peak, hem, half } = of
	const low = { peak, half, hem: hem - (hem - peak) * 0.24 }
	return polygon([
		[-half * 0.06, peak + (hem - peak) * 0.34],
		...fringe(low, 0.1, -0.8, 4, dice),
		[-half * 0.5, peak + (hem - peak) * 0.56],
	])
}

/** The top of a small spruce. */
export const evergreenTop: DrawPiece = (line, dice) => {
	const heightCm = size(line.lengthCm, 75)
	const halfCm = size(line.acrossCm, heightCm * 0.5, heightCm * 0.25, heightCm * 0.8) / 2
	const { light, base, dark } = tones(line.hex)
	return times(3, () => {
		const tiers = times(7, (t): Tier => {
			const hem = -heightCm * (0.08 + 0.74 * t) + roll(dice, -0.01, 0.01) * heightCm
			return {
				hem,
				peak: Math.max(-heightCm, hem - heightCm * (0.27 - 0.08 * t)),
				half: halfCm * (1 - 0.8 * t ** 0.9) * roll(dice, 0.95, 1.03),
			}
		})
		const under = (of: Tier): Tier => ({ ...of, hem: of.hem + (of.hem - of.peak) * 0.2, half: of.half * 0.95 })
		const trunk = walk({ from: [0, 0], heading: 0, lengthCm: heightCm * 0.2, legs: 2, turn: () => 0 })
		return drawn(
			[
				fill(barkBrown, [limb(trunk, heightCm * 0.032, heightCm * 0.028)]),
				...tiers.flatMap((of) => [
					fill(dark, [polygon([[0, of.peak], ...fringe(under(of), 0.95, -0.95, 8, dice)])]),
					fill(base, [tier(of, dice)]),
				]),
				fill(
					light,
					tiers.map((of) => gleam(of, dice)),
				),
			],
			{ fitCm: heightCm },
		)
	})
}
