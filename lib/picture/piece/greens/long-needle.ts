import type { Dice, DrawPiece } from '../../piece'
import { limb } from '../growth/band'
import { roll, side, times } from '../growth/roll'
import { size } from '../growth/size'
import { type Spot, spotAt, walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill, pen } from '../ink/layer'
import { ahead } from '../ink/point'
import { type Line, line } from '../ink/shape'
import { barkBrown, tones } from '../ink/tones'

type Brush = { readonly count: number; readonly spread: number; readonly longCm: number }

/** Needles that stand off their twig, close to it at its tip, and give way a little to their weight. */
const needles = (twig: readonly Spot[], { count, spread, longCm }: Brush, dice: Dice): Line[] =>
	times(count, (t, index) => {
		const { at, heading } = spotAt(twig, 0.35 + 0.65 * t)
		const out = side(index) * spread * (1 - 0.8 * t) * roll(dice, 0.55, 1.05) + roll(dice, -0.1, 0.1)
		const half = ahead(at, heading + out, longCm * 0.55)
		return line(at, [
			half,
			ahead(half, heading + out + Math.sign(out) * roll(dice, 0, 0.3), longCm * roll(dice, 0.34, 0.5)),
		])
	})

/** A tuft of pine. */
export const longNeedle: DrawPiece = (line_, dice) => {
	const lengthCm = size(line_.lengthCm, 35)
	const acrossCm = size(line_.acrossCm, lengthCm * 0.75, lengthCm * 0.35, lengthCm * 1.1)
	const { light, base, dark } = tones(line_.hex)
	return times(3, (_, variant) => {
		const longCm = acrossCm * 0.52
		const stemCm = lengthCm - longCm * 0.95
		const bend = roll(dice, -0.09, 0.09)
		const main = walk({ from: [0, 0], heading: -bend * 2, lengthCm: stemCm, legs: 4, turn: () => bend })
		const twigs = [-1, 1].map((to) => {
			const { at, heading } = spotAt(main, 0.45 + 0.1 * ((variant + to) % 2) + roll(dice, -0.05, 0.05))
			return walk({
				from: at,
				heading: heading + to * roll(dice, 0.5, 0.7),
				lengthCm: stemCm * roll(dice, 0.34, 0.46),
				legs: 3,
				turn: () => -to * 0.1,
			})
		})
		const all = [...twigs, main]
		const brushes = (count: number, spread: number, share: number) =>
			all.flatMap((twig) => needles(twig, { count, spread, longCm: longCm * share }, dice))
		const thin = longCm * 0.031
		return drawn([
			pen(dark, thin, brushes(12, 1.5, 1)),
			fill(barkBrown, [
				limb(main, lengthCm * 0.026, lengthCm * 0.016),
				...twigs.map((twig) => limb(twig, lengthCm * 0.018, lengthCm * 0.012)),
			]),
			pen(base, thin, brushes(12, 1.25, 1)),
			pen(light, thin * 0.85, brushes(6, 0.9, 0.94)),
		])
	})
}
