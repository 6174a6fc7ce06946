import type { Dice, DrawPiece } from '../../piece'
import { band, limb } from '../growth/band'
import { alternate, roll, side, times } from '../growth/roll'
import { size } from '../growth/size'
import { type Spot, spotAt, walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import { ahead } from '../ink/point'
import { line, type Shape } from '../ink/shape'
import { isPaleBark, tones } from '../ink/tones'

/** Nearly straight: it bends a little at every bud and back again. */
const stem = (lengthCm: number, dice: Dice): readonly Spot[] => {
	const heading = roll(dice, -0.03, 0.03)
	const bend = roll(dice, -0.06, 0.06)
	return walk({
		from: [0, 0],
		heading,
		lengthCm,
		legs: 7,
		turn: (t) => (Math.round(t * 7) % 2 === 0 ? -bend : bend) + roll(dice, -0.035, 0.035),
	})
}

/** Twigs leave at a sharp angle and turn up again, the shorter the higher they stand. */
function twig(main: readonly Spot[], t: number, to: -1 | 1, lengthCm: number, dice: Dice): readonly Spot[] {
	const { at, heading } = spotAt(main, t)
	const out = to * roll(dice, 0.34, 0.56)
	return walk({
		from: at,
		heading: heading + out,
		lengthCm: lengthCm * (0.04 + 0.46 * (1 - t)) * roll(dice, 0.75, 1.15),
		legs: 3,
		turn: () => -out * roll(dice, 0.12, 0.3),
	})
}

/** Birch bears dark marks across its bark, broad ones and fine ones. */
const barkMarks = (main: readonly Spot[], half: (t: number) => number, dice: Dice): Shape[] =>
	times(15, (t, index) => {
		const spot = spotAt(main, 0.02 + 0.72 * t + roll(dice, -0.02, 0.02))
		const across = spot.heading + Math.PI / 2
		const from = index % 3 === 0 ? -0.9 : roll(dice, -0.8, 0.3)
		const to = Math.min(0.95, from + roll(dice, 0.6, 1.3))
		return line(ahead(spot.at, across, from * half(spot.t)), [ahead(spot.at, across, to * half(spot.t))])
	})

/** Poles and straight switches: birch, dogwood. */
export const straightStems: DrawPiece = (line_, dice) => {
	const lengthCm = size(line_.lengthCm, 90)
	const isBirch = isPaleBark(line_.hex)
	const thickCm = size(line_.acrossCm, lengthCm * (isBirch ? 0.026 : 0.015), lengthCm * 0.011, lengthCm * 0.024)
	const { light, base, dark, deep } = tones(line_.hex)
	const half = (share: number) => (t: number) => (thickCm / 2) * (1 - 0.62 * t) * share
	const bark = (main: readonly Spot[]): Layer =>
		isBirch
			? pen(tones(deep).deep, thickCm * 0.19, barkMarks(main, half(1), dice))
			: fill(light, [band(main, half(-0.75), half(-0.2))])
	return times(4, (_, variant) => {
		const main = stem(lengthCm, dice)
		const twigs = times(4 + (variant % 3), (t, index) => {
			const at = 0.6 + 0.34 * t + roll(dice, -0.02, 0.02)
			return limb(twig(main, at, side(index + variant), lengthCm, dice), thickCm * 0.44, thickCm * 0.14)
		})
		const [front, back] = alternate(twigs)
		return drawn(
			[
				fill(dark, back),
				fill(base, [limb(main, thickCm, thickCm * 0.38), ...front]),
				fill(dark, [band(main, half(0.3), half(1))]),
				bark(main),
			],
			{ fitCm: lengthCm },
		)
	})
}
