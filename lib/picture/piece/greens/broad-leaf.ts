import type { DrawPiece } from '../../piece'
import { limb } from '../growth/band'
import { blade, gleam, type Leaf, leaf, leftHalf, midrib, rightHalf } from '../growth/leaf'
import { roll, times } from '../growth/roll'
import { size } from '../growth/size'
import { spotAt, walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import { barkBrown, type Tones, tones } from '../ink/tones'

/** Seen from above: glossy, one half in shade, a gleam along the other. */
const upper = (of: Tones, leaves: readonly Leaf[]): Layer[] => [
	fill(of.base, leaves.map(blade)),
	fill(of.dark, leaves.map(rightHalf)),
	fill(of.light, leaves.map(gleam)),
	pen(of.light, (leaves[0]?.lengthCm ?? 0) * 0.02, leaves.map(midrib)),
]

/** Seen from below: the felt of magnolia, in the second colour. */
const under = (of: Tones, leaves: readonly Leaf[]): Layer[] => [
	fill(of.base, leaves.map(blade)),
	fill(of.dark, leaves.map(leftHalf)),
	pen(of.light, (leaves[0]?.lengthCm ?? 0) * 0.025, leaves.map(midrib)),
]

/** A tip of magnolia, laurel or salal. */
export const broadLeaf: DrawPiece = (line, dice) => {
	const lengthCm = size(line.lengthCm, 38)
	const longCm = size(line.acrossCm, lengthCm * 0.72, lengthCm * 0.35, lengthCm * 1.1) * 0.56
	const green = tones(line.hex)
	const back = tones(line.secondHex ?? green.dark)
	return times(3, (_, variant) => {
		const stemCm = lengthCm - longCm * 0.9
		const bend = roll(dice, -0.06, 0.06)
		const stem = walk({ from: [0, 0], heading: -bend * 2, lengthCm: stemCm, legs: 4, turn: () => bend })
		const flip = variant === 1 ? -1 : 1
		const whorl = (headings: readonly number[], t: number, share: number) =>
			headings.map((out) => {
				const turned = flip * out + roll(dice, -0.14, 0.14)
				const long = longCm * share * roll(dice, 0.9, 1.06)
				return leaf(
					spotAt(stem, t).at,
					turned,
					long,
					longCm * 0.4 * share * roll(dice, 0.92, 1.08),
					turned * 0.25,
					0.54,
				)
			})
		return drawn([
			...upper({ ...green, base: green.dark, dark: green.deep, light: green.base }, whorl([-0.38, 0.45], 0.98, 0.95)),
			...under(back, [...whorl([-1, 1.05], 0.78, 0.98), ...whorl([variant === 2 ? -1.2 : 1.45], 0.6, 0.86)]),
			fill(barkBrown, [limb(stem, lengthCm * 0.028, lengthCm * 0.02)]),
			...upper(green, [...whorl([-1.45, 1.2], 0.38, 0.84), ...whorl([-0.05], 1, 0.98)]),
			...upper(green, whorl([-0.82, 0.72], 0.9, 0.9)),
		])
	})
}
