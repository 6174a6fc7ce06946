import type { Dice, DrawPiece } from '../../piece'
import { thread } from '../growth/band'
import { blade, drop, type Leaf, leaf, rightHalf } from '../growth/leaf'
import { alternate, roll, side, times } from '../growth/roll'
import { size } from '../growth/size'
import { type Spot, spotAt, walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import { ahead } from '../ink/point'
import type { Line } from '../ink/shape'
import { leafGreen, type Tones, tones } from '../ink/tones'

const bells = 15

/** Florets to both sides of the upper part, smaller and steeper towards the tip. */
const florets = (stem: readonly Spot[], heightCm: number, dice: Dice): Line[] =>
	times(bells, (t, index) => {
		const { at, heading } = spotAt(stem, 0.42 + 0.58 * t)
		const long = heightCm * (0.098 - 0.05 * t) * roll(dice, 0.92, 1.1)
		const out = index === bells - 1 ? 0 : side(index) * (1.1 - 0.6 * t)
		return drop(at, heading + out, long, long * 0.66)
	})

/** Where the light falls on the florets to the left. */
const gleams = (stem: readonly Spot[], heightCm: number): Line[] =>
	times(5, (t) => {
		const { at, heading } = spotAt(stem, 0.45 + 0.46 * t)
		const long = heightCm * (0.06 - 0.03 * t)
		return drop(ahead(at, heading - 1 + 0.5 * t, long * 0.5), heading - 0.8, long, long * 0.55)
	})

function blossom(of: Tones, stems: readonly (readonly Spot[])[], heightCm: number, dice: Dice): Layer[] {
	const sides = stems.map((stem) => alternate(florets(stem, heightCm, dice)))
	return [
		fill(
			of.dark,
			sides.flatMap(([, right]) => right),
		),
		fill(
			of.base,
			sides.flatMap(([left]) => left),
		),
		fill(
			of.light,
			stems.flatMap((stem) => gleams(stem, heightCm)),
		),
	]
}

type Clump = { readonly heightCm: number; readonly spread: number }

/** Tall and short in turn; `turned` says which begins. */
const stemsOf = ({ heightCm, spread }: Clump, turned: number, dice: Dice): (readonly Spot[])[] =>
	times(4, (t, index) => {
		const out = (2 * t - 1) * spread * 0.8 + roll(dice, -0.04, 0.04)
		const lengthCm = heightCm * ((index + turned) % 2 === 0 ? 0.76 : 1) * roll(dice, 0.9, 1)
		return walk({ from: [out * heightCm * 0.14, 0], heading: out * 0.6, lengthCm, legs: 4, turn: () => -out * 0.1 })
	})

const leavesOf = ({ heightCm, spread }: Clump, count: number, long: number, dice: Dice): Leaf[] =>
	times(count, (t) => {
		const out = (2 * t - 1) * (0.8 + spread * 0.6) + roll(dice, -0.12, 0.12)
		const lengthCm = heightCm * long * roll(dice, 0.85, 1.1)
		return leaf([out * heightCm * 0.04, 0], out * 0.85, lengthCm, heightCm * 0.095, out * 0.45, 0.5)
	})

/** Several spikes over their leaves: salvia, snapdragon, foxglove; the second colour is that of the leaves. */
export const flowerSpike: DrawPiece = (line, dice) => {
	const heightCm = size(line.lengthCm, 45)
	const spread = size(line.acrossCm, heightCm * 0.6, heightCm * 0.3, heightCm * 1.1) / heightCm
	const clump = { heightCm, spread }
	const green = tones(line.secondHex ?? leafGreen)
	return times(3, (_, variant) => {
		const stems = stemsOf(clump, variant, dice)
		const front = leavesOf(clump, 5, 0.33, dice)
		return drawn(
			[
				fill(green.dark, leavesOf(clump, 6, 0.44, dice).map(blade)),
				pen(green.dark, heightCm * 0.014, stems.map(thread)),
				fill(green.base, front.map(blade)),
				fill(green.light, front.map(rightHalf)),
				...blossom(tones(line.hex), stems, heightCm, dice),
			],
			{ fitCm: heightCm },
		)
	})
}
