import type { Dice, DrawPiece } from '../../piece'
import { thread } from '../growth/band'
import { alternate, roll, side, times } from '../growth/roll'
import { size } from '../growth/size'
import { spray } from '../growth/spray'
import { type Spot, spotAt } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { pen } from '../ink/layer'
import { ahead } from '../ink/point'
import { type Line, line } from '../ink/shape'
import { tones } from '../ink/tones'

/** Short leaflets to both sides of a twig, all in one plane. */
const fingers = (twig: readonly Spot[], count: number, longCm: number, dice: Dice): Line[] =>
	times(count, (t, index) => {
		const { at, heading } = spotAt(twig, 0.1 + 0.86 * t)
		return line(at, [ahead(at, heading + side(index) * 0.7, longCm * (1 - 0.6 * t) * roll(dice, 0.8, 1.12))])
	})

/** Cedar and its like: flat sprays that fan out from a bowed stem. */
export const flatFan: DrawPiece = (line_, dice) => {
	const lengthCm = size(line_.lengthCm, 40)
	const reachCm = size(line_.acrossCm, lengthCm * 0.62, lengthCm * 0.3, lengthCm * 1.1) / 2
	const { light, base, dark, deep } = tones(line_.hex)
	const longCm = Math.min(lengthCm * 0.11, reachCm * 0.37)
	const wide = longCm * 0.21
	const twigCm = (t: number) => reachCm * (1.38 - 0.7 * t) * (t < 0.2 ? 0.84 : 1)
	return times(3, () => {
		const { main, twigs } = spray(
			{ lengthCm: lengthCm * 0.97, twigs: 8, from: 0.1, to: 0.7, out: [0.62, 0.9], back: 0.08, twigCm, bend: 0.1 },
			dice,
		)
		const [left, right] = alternate(twigs)
		const lit = [...left, main.slice(3)]
		const leaflets = (of: readonly (readonly Spot[])[], count: number, share: number) =>
			of.flatMap((twig) => fingers(twig, count, longCm * share, dice))
		return drawn([
			pen(dark, wide, [...leaflets(right, 10, 1), ...right.map(thread)]),
			pen(base, wide, [...leaflets(lit, 10, 1), ...lit.map(thread)]),
			pen(light, wide * 0.6, [...leaflets(lit, 5, 0.7), ...lit.map(thread)]),
			pen(base, wide * 0.55, right.map(thread)),
			pen(deep, wide * 0.7, [thread(main)]),
		])
	})
}
