import type { Dice, DrawPiece } from '../../piece'
import { thread } from '../growth/band'
import { blade, type Leaf, leaf, rightHalf } from '../growth/leaf'
import { roll, side, times } from '../growth/roll'
import { size } from '../growth/size'
import { type Spot, spotAt, walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import { ahead, type Point } from '../ink/point'
import { dot } from '../ink/shape'
import { barkBrown, isGreen, type Tones, tones } from '../ink/tones'

type Twigs = readonly (readonly Spot[])[]

/** Berries to both sides of a twig and one at its tip. */
const places = (twig: readonly Spot[], low: number, count: number, berryCm: number, dice: Dice): Point[] =>
	times(count, (t, index) => {
		const { at, heading } = spotAt(twig, low + (1 - low) * t)
		const off = berryCm * (t === 1 ? 0 : roll(dice, 0.5, 0.85))
		return ahead(at, heading + side(index) * roll(dice, 0.8, 1.5), off)
	})

/** Round, with shade to lower right and a gleam to upper left. */
function round(of: Tones, at: readonly Point[], berryCm: number): Layer[] {
	const moved = (share: number) => at.map(([x, y]) => dot([x - berryCm * share, y - berryCm * share]))
	return [
		pen(of.dark, berryCm, moved(0)),
		pen(of.base, berryCm * 0.78, moved(0.09)),
		pen(of.pale, berryCm * 0.24, moved(0.2)),
	]
}

const leaves = (twigs: Twigs, longCm: number, dice: Dice): Leaf[] =>
	twigs.flatMap((twig) =>
		[0.15, 0.6, 1].map((t, index) => {
			const { at, heading } = spotAt(twig, t)
			return leaf(at, heading + side(index) * roll(dice, 0.5, 1), longCm, longCm * 0.43, 0.2)
		}),
	)

/** Four twigs off the upper part of the stem. */
const twigsOf = (main: readonly Spot[], from: number, headCm: number, turned: number, dice: Dice): Twigs =>
	times(4, (t, index) => {
		const { at, heading } = spotAt(main, from + (1 - from) * (0.08 + 0.52 * t))
		const out = side(index + turned) * roll(dice, 0.45, 0.7)
		return walk({
			from: at,
			heading: heading + out,
			lengthCm: headCm * (0.62 - 0.3 * t),
			legs: 2,
			turn: () => -out * 0.2,
		})
	})

/** A twig of berries; a green second colour gives it leaves, any other is that of its bark. */
export const berries: DrawPiece = (line, dice) => {
	const lengthCm = size(line.lengthCm, 24)
	const acrossCm = size(line.acrossCm, lengthCm * 0.5, lengthCm * 0.2, lengthCm)
	const berryCm = Math.min(2, Math.max(lengthCm * 0.03, acrossCm * 0.095))
	const headCm = Math.min(lengthCm * 0.62, acrossCm * 1.5)
	const from = 1 - headCm / lengthCm
	const green = line.secondHex !== null && isGreen(line.secondHex) ? tones(line.secondHex) : null
	const bark = green?.dark ?? line.secondHex ?? barkBrown
	return times(4, (_, variant) => {
		const bend = roll(dice, -0.08, 0.08)
		const main = walk({ from: [0, 0], heading: -bend, lengthCm: lengthCm * 0.95, legs: 4, turn: () => bend })
		const twigs = twigsOf(main, from, headCm, variant, dice)
		const all = twigs.flatMap((twig) => places(twig, 0.25, 6, berryCm, dice))
		const leafy = green === null ? [] : leaves(twigs, headCm * 0.3, dice)
		return drawn([
			pen(bark, lengthCm * 0.008 + berryCm * 0.14, [main, ...twigs].map(thread)),
			fill(green?.base ?? bark, leafy.map(blade)),
			fill(green?.dark ?? bark, leafy.map(rightHalf)),
			...round(tones(line.hex), [...places(main, from + (1 - from) * 0.3, 8, berryCm, dice), ...all], berryCm),
		])
	})
}
