import type { Dice, DrawPiece } from '../../piece'
import { limb } from '../growth/band'
import { blade, type Leaf, leaf, midrib, rightHalf } from '../growth/leaf'
import { roll, side, times } from '../growth/roll'
import { size } from '../growth/size'
import { type Spot, spotAt, walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import { ahead, type Point } from '../ink/point'
import { closed, type Line } from '../ink/shape'
import { leafGreen, type Tones, tones } from '../ink/tones'

type Cup = { readonly foot: Point; readonly heading: number; readonly highCm: number }

/** A point of the cup: `u` to its right and `v` up, in its height. */
const inCup = ({ foot, heading, highCm }: Cup, u: number, v: number): Point =>
	ahead(ahead(foot, heading, v * highCm), heading + Math.PI / 2, u * highCm)

/** The petal at one side, behind the one that faces the viewer. */
const outer = (of: Cup, to: -1 | 1): Line => {
	const at = (u: number, v: number) => inCup(of, u * to, v)
	return closed(at(0, 0), [at(0.42, 0.02), at(0.5, 0.5), at(0.34, 1)], [at(0.1, 0.8), at(0, 0.5), at(0, 0)])
}

const inner = (of: Cup): Line => {
	const at = (u: number, v: number) => inCup(of, u, v)
	return closed(at(0, 0), [at(-0.42, 0.3), at(-0.24, 0.75), at(0, 1.02)], [at(0.24, 0.75), at(0.42, 0.3), at(0, 0)])
}

const tulips = (of: Tones, cups: readonly Cup[]): Layer[] => [
	fill(
		of.dark,
		cups.map((cup) => outer(cup, 1)),
	),
	fill(
		of.base,
		cups.map((cup) => outer(cup, -1)),
	),
	fill(of.light, cups.map(inner)),
]

type Clump = { readonly heightCm: number; readonly spread: number; readonly cupCm: number }

const stemsOf = ({ heightCm, spread, cupCm }: Clump, dice: Dice): (readonly Spot[])[] =>
	times(5, (t, index) => {
		const out = (2 * t - 1) * spread + roll(dice, -0.05, 0.05)
		const lengthCm = (heightCm - cupCm) * (index % 2 === 0 ? 0.86 : 1) * roll(dice, 0.92, 1)
		return walk({ from: [out * heightCm * 0.15, 0], heading: out * 1.2, lengthCm, legs: 4, turn: () => -out * 0.2 })
	})

const leavesOf = ({ heightCm, spread }: Clump, count: number, long: number, dice: Dice): Leaf[] =>
	times(count, (t, index) => {
		const out = (2 * t - 1) * spread * 1.5 + roll(dice, -0.1, 0.1)
		const lengthCm = heightCm * long * roll(dice, 0.85, 1.1)
		return leaf(
			[(t - 0.5) * heightCm * 0.1, 0],
			out,
			lengthCm,
			heightCm * 0.15,
			side(index) * roll(dice, 0.1, 0.5),
			0.45,
		)
	})

/** Tulips among their leaves; the second colour is that of the leaves. */
export const bulbFlowers: DrawPiece = (line, dice) => {
	const heightCm = size(line.lengthCm, 38)
	const spread = (size(line.acrossCm, heightCm * 0.55, heightCm * 0.25, heightCm * 1.2) / heightCm) * 0.5
	const clump = { heightCm, spread, cupCm: heightCm * 0.19 }
	const green = tones(line.secondHex ?? leafGreen)
	return times(3, () => {
		const stems = stemsOf(clump, dice)
		const cups = stems.map((stem): Cup => {
			const { at, heading } = spotAt(stem, 1)
			return { foot: at, heading, highCm: clump.cupCm * roll(dice, 0.92, 1.02) }
		})
		const front = leavesOf(clump, 4, 0.46, dice)
		const stalks = stems.map((stem) => limb(stem, heightCm * 0.022, heightCm * 0.018))
		return drawn(
			[
				fill(green.dark, [...leavesOf(clump, 5, 0.62, dice).map(blade), ...stalks]),
				fill(green.base, front.map(blade)),
				fill(green.light, front.map(rightHalf)),
				pen(green.dark, heightCm * 0.006, front.map(midrib)),
				...tulips(tones(line.hex), cups),
			],
			{ fitCm: heightCm },
		)
	})
}
