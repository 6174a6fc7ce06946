import type { DrawPiece } from '../../piece'
import { blade, type Leaf, leaf } from '../growth/leaf'
import { roll, times } from '../growth/roll'
import { size } from '../growth/size'
import { drawn } from '../ink/drawn'
import { fill } from '../ink/layer'
import { tones } from '../ink/tones'

/** A fountain of fine blades; some of them in the second colour. */
export const grass: DrawPiece = (line, dice) => {
	const heightCm = size(line.lengthCm, 50)
	const spread = size(line.acrossCm, heightCm * 1.1, heightCm * 0.4, heightCm * 1.8) / heightCm
	const { light, base, dark, deep } = tones(line.hex)
	return times(3, () => {
		const fan = (count: number, wide: number, long: number): Leaf[] =>
			times(count, (t) => {
				const out = (2 * t - 1) * wide + roll(dice, -0.13, 0.13)
				const length = heightCm * (long - 0.1 * Math.abs(out)) * roll(dice, 0.86, 1.08)
				const lean = Math.min(1, Math.max(-1, out * spread * 0.62))
				const droop = Math.min(1.5, Math.max(-1.5, out * spread * roll(dice, 0.8, 1.7)))
				return leaf([out * heightCm * 0.07, 0], lean, length, heightCm * roll(dice, 0.02, 0.028), droop, 0.52)
			})
		return drawn(
			[
				fill(deep, fan(8, 0.8, 1.05).map(blade)),
				fill(dark, fan(11, 1, 1.1).map(blade)),
				fill(base, fan(13, 1, 1).map(blade)),
				fill(line.secondHex ?? light, fan(9, 0.95, 0.84).map(blade)),
			],
			{ fitCm: heightCm },
		)
	})
}
