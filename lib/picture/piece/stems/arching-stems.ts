import type { Dice, DrawPiece } from '../../piece'
import { band, limb } from '../growth/band'
import { blade, type Leaf, leaf, leftHalf, midrib } from '../growth/leaf'
import { alternate, roll, side, times } from '../growth/roll'
import { size } from '../growth/size'
import { type Spot, spotAt, walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import { type Tones, tones } from '../ink/tones'

const leaves = 23

/** To both sides and one at the tip. */
const leavesOf = (wand: readonly Spot[], leafCm: number, dice: Dice): Leaf[] =>
	times(leaves, (t, index) => {
		const { at, heading } = spotAt(wand, 0.2 + 0.8 * t)
		const long = leafCm * (1 - 0.5 * t) * roll(dice, 0.85, 1.1)
		const out = index === leaves - 1 ? 0 : side(index) * roll(dice, 0.6, 0.85)
		return leaf(at, heading + out, long, long * 0.34, -out * 0.5, 0.44)
	})

const bark = (of: Tones, wand: readonly Spot[], thickCm: number): Layer[] => [
	fill(of.base, [limb(wand, thickCm, thickCm * 0.3)]),
	fill(of.dark, [
		band(
			wand,
			(t) => thickCm * 0.1 * (1 - t),
			(t) => (thickCm / 2) * (1 - 0.7 * t),
		),
	]),
]

/** A wand that rises and bows to the right; the second colour is that of its leaves or buds. */
export const archingStems: DrawPiece = (line, dice) => {
	const lengthCm = size(line.lengthCm, 75)
	const thickCm = lengthCm * 0.013
	const green = tones(line.secondHex ?? line.hex)
	const leafCm = lengthCm * (line.secondHex === null ? 0.085 : 0.115)
	return times(3, (_, variant) => {
		const bow = 1.35 + variant * 0.22 + roll(dice, -0.1, 0.1)
		const turn = (t: number) => (bow / 9) * (0.25 + 1.5 * t)
		const wand = walk({ from: [0, 0], heading: roll(dice, 0, 0.12), lengthCm, legs: 9, turn })
		const [upper, under] = alternate(leavesOf(wand, leafCm, dice))
		return drawn(
			[
				fill(green.dark, under.map(blade)),
				pen(green.deep, thickCm * 0.22, under.map(midrib)),
				...bark(tones(line.hex), wand, thickCm),
				fill(green.base, upper.map(blade)),
				fill(green.light, upper.map(leftHalf)),
			],
			{ habit: 'leans' },
		)
	})
}
