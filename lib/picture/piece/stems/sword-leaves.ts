import type { Dice, DrawPiece } from '../../piece'
import { blade, type Leaf, leaf, midrib, rightHalf } from '../growth/leaf'
import { roll, times } from '../growth/roll'
import { size } from '../growth/size'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import { tones } from '../ink/tones'

type Fan = { readonly count: number; readonly wide: number; readonly long: number }

/** A leaf in three bends over, the others stand stiff. */
const fan = ({ count, wide, long }: Fan, spread: number, dice: Dice): Leaf[] =>
	times(count, (t) => {
		const out = ((2 * t - 1) * wide + roll(dice, -0.07, 0.07)) * spread
		const isBent = Math.abs(out) > 0.3 && dice() < 0.36
		const length = long * (1 - 0.16 * Math.abs(out)) * roll(dice, 0.9, 1.05)
		return leaf(
			[out * long * 0.05, 0],
			out * 0.85,
			length,
			long * 0.088,
			out * (isBent ? 1.2 : 0.25),
			isBent ? 0.6 : 0.38,
		)
	})

/** Stiff leaves from one foot: flax, dracaena, iris, yucca. The second colour is the stripe of its leaves. */
export const swordLeaves: DrawPiece = (line, dice) => {
	const heightCm = size(line.lengthCm, 55)
	const spread = size(line.acrossCm, heightCm, heightCm * 0.4, heightCm * 1.4) / heightCm
	const { light, base, dark, deep } = tones(line.hex)
	const leaves = (of: readonly Leaf[], plain: Layer['colour'], shade: Layer['colour'], rib: Layer['colour']) => [
		fill(plain, of.map(blade)),
		fill(shade, of.map(rightHalf)),
		pen(rib, heightCm * 0.009, of.map(midrib)),
	]
	return times(3, () =>
		drawn(
			[
				...leaves(fan({ count: 7, wide: 0.8, long: heightCm }, spread, dice), dark, deep, line.secondHex ?? base),
				...leaves(
					fan({ count: 5, wide: 1.1, long: heightCm * 0.82 }, spread, dice),
					base,
					dark,
					line.secondHex ?? light,
				),
				...leaves(
					fan({ count: 3, wide: 0.75, long: heightCm * 0.6 }, spread, dice),
					light,
					base,
					line.secondHex ?? dark,
				),
			],
			{ fitCm: heightCm },
		),
	)
}
