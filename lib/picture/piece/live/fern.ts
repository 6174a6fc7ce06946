import type { Dice, DrawPiece } from '../../piece'
import { thread } from '../growth/band'
import { feather } from '../growth/feather'
import { roll, times } from '../growth/roll'
import { size } from '../growth/size'
import { type Spot, walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill, pen } from '../ink/layer'
import type { Line } from '../ink/shape'
import { tones } from '../ink/tones'

/** Leaflets grow from nothing at the foot to their longest below the middle, and taper to the tip. */
const leafletCm = (longCm: number, dice: Dice) => (t: number) =>
	longCm * Math.min(1, 0.25 + 3 * t) * (1.06 - t) ** 0.8 * roll(dice, 0.93, 1.07)

const frond = (spine: readonly Spot[], longCm: number, dice: Dice): Line =>
	feather(spine.slice(1), 11, { cm: leafletCm(longCm, dice), forward: (t) => 0.3 + 0.45 * t })

/** A fern: fronds that rise and bow outwards. */
export const fern: DrawPiece = (line, dice) => {
	const heightCm = size(line.lengthCm, 38)
	const spread = size(line.acrossCm, heightCm * 1.3, heightCm * 0.5, heightCm * 1.7) / heightCm / 1.15
	const { light, base, dark, deep } = tones(line.hex)
	return times(3, (_, variant) => {
		const fan = (outs: readonly number[], long: number) =>
			outs.map((of) => {
				const out = of * spread + roll(dice, -0.1, 0.1)
				const lengthCm = heightCm * long * roll(dice, 0.92, 1.06)
				return walk({
					from: [out * heightCm * 0.03, 0],
					heading: out * 0.62,
					lengthCm,
					legs: 6,
					turn: (t) => out * 0.24 * (0.3 + 1.1 * t),
				})
			})
		const flip = variant === 1 ? -1 : 1
		const back = fan([-0.5, -0.12 * flip, 0.46], 1.08)
		const middle = fan([-1, 0.96], 1)
		const front = fan([-0.72, 0.2 * flip, 0.74], 0.72)
		const fronds = (of: readonly (readonly Spot[])[], long: number) =>
			of.map((spine) => frond(spine, heightCm * long, dice))
		return drawn(
			[
				fill(dark, fronds(back, 0.17)),
				fill(base, fronds(middle, 0.16)),
				fill(light, fronds(front, 0.13)),
				pen(deep, heightCm * 0.008, [...back, ...middle].map(thread)),
				pen(dark, heightCm * 0.008, front.map(thread)),
			],
			{ fitCm: heightCm },
		)
	})
}
