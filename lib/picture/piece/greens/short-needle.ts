import type { Dice, DrawPiece } from '../../piece'
import { thread } from '../growth/band'
import { roll, times } from '../growth/roll'
import { size } from '../growth/size'
import { spray } from '../growth/spray'
import { type Spot, spotAt } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { pen } from '../ink/layer'
import { ahead } from '../ink/point'
import { type Line, line } from '../ink/shape'
import { barkBrown, tones } from '../ink/tones'

/** Needles of one side of a twig, combed forward, the more the nearer to its tip. */
const comb = (twig: readonly Spot[], to: number, count: number, longCm: number, dice: Dice): Line[] =>
	times(count, (t) => {
		const { at, heading } = spotAt(twig, 0.05 + 0.95 * t)
		const out = to * (1.02 - 0.85 * t ** 2.5) + roll(dice, -0.07, 0.07)
		return line(at, [ahead(at, heading + out, longCm * (1 - 0.3 * t) * roll(dice, 0.86, 1.08))])
	})

/** A branch of fir or spruce: flat, its twigs in pairs. */
export const shortNeedle: DrawPiece = (line_, dice) => {
	const lengthCm = size(line_.lengthCm, 38)
	const reachCm = size(line_.acrossCm, lengthCm * 0.62, lengthCm * 0.3, lengthCm * 1.1) / 2
	const { light, base, dark, deep } = tones(line_.hex)
	const needleCm = Math.min(lengthCm * 0.07, reachCm * 0.26)
	const thin = needleCm * 0.2
	const twigCm = (t: number) => reachCm * (1.24 - 0.6 * t)
	return times(3, () => {
		const { main, twigs } = spray(
			{ lengthCm: lengthCm * 0.95, twigs: 6, from: 0.14, to: 0.66, out: [0.66, 0.84], back: 0.1, twigCm, bend: 0.05 },
			dice,
		)
		const needles = (to: number) =>
			twigs.flatMap((twig, index) => comb(twig, to, 9 - Math.floor(index / 2), needleCm, dice))
		return drawn([
			pen(deep, needleCm * 0.55, [...twigs, main.slice(1)].map(thread)),
			pen(dark, thin, [...needles(1), ...comb(main, 1, 16, needleCm, dice)]),
			pen(base, thin, needles(-1)),
			pen(barkBrown, lengthCm * 0.011, [main, ...twigs].map(thread)),
			pen(base, thin, comb(main, 0.8, 10, needleCm * 0.8, dice)),
			pen(light, thin, comb(main, -1, 16, needleCm, dice)),
		])
	})
}
