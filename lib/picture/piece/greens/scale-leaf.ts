import type { Dice, DrawPiece } from '../../piece'
import { thread } from '../growth/band'
import { roll, side, times } from '../growth/roll'
import { size } from '../growth/size'
import { spray } from '../growth/spray'
import { type Spot, spotAt, walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { dashes, type Layer, pen } from '../ink/layer'
import { ahead, type Point } from '../ink/point'
import { dot, type Line } from '../ink/shape'
import { barkBrown, type Tones, tones } from '../ink/tones'

/** Cords of scales that crowd upwards round their twig. */
const cords = (twig: readonly Spot[], count: number, longCm: number, dice: Dice): Line[] =>
	times(count, (t, index) => {
		const { at, heading } = spotAt(twig, 0.15 + 0.85 * t)
		const out = index === count - 1 ? 0 : side(index) * roll(dice, 0.45, 0.9)
		const lengthCm = longCm * (1 - 0.35 * t) * roll(dice, 0.8, 1.15)
		return thread(walk({ from: at, heading: heading + out, lengthCm, legs: 2, turn: () => -out * 0.35 }))
	})

const berries = (of: Tones, places: readonly Point[], wideCm: number): Layer[] => [
	pen(of.dark, wideCm, places.map(dot)),
	pen(
		of.light,
		wideCm * 0.4,
		places.map(([x, y]) => dot([x - wideCm * 0.13, y - wideCm * 0.16])),
	),
]

/** Juniper and its like: plumes of cords, knobbly with scales; the second colour is that of its berries. */
export const scaleLeaf: DrawPiece = (line, dice) => {
	const lengthCm = size(line.lengthCm, 35)
	const spread = Math.sqrt(size(line.acrossCm, lengthCm * 0.6, lengthCm * 0.35, lengthCm * 1.1) / lengthCm / 0.6)
	const { light, base, dark } = tones(line.hex)
	const thick = lengthCm * 0.024
	const twigCm = (t: number) => lengthCm * (0.44 - 0.2 * t) * spread
	const out = [0.55 * spread, 0.78 * spread] as const
	return times(3, () => {
		const { main, twigs } = spray(
			{ lengthCm: lengthCm * 0.86, twigs: 6, from: 0.14, to: 0.72, out, back: 0.18, twigCm, bend: 0.07 },
			dice,
		)
		const all = [...twigs, main]
		const plumes = (count: number, share: number) => all.flatMap((twig) => cords(twig, count, lengthCm * share, dice))
		const places = twigs.map((twig, index) => {
			const { at, heading } = spotAt(twig, roll(dice, 0.3, 0.7))
			return ahead(at, heading + side(index) * 1.4, thick)
		})
		return drawn([
			pen(barkBrown, lengthCm * 0.016, all.map(thread)),
			pen(dark, thick, plumes(5, 0.17)),
			dashes(base, thick, [0, thick * 0.72], plumes(5, 0.15)),
			dashes(light, thick * 0.5, [0, thick * 0.8], plumes(3, 0.12)),
			...(line.secondHex === null ? [] : berries(tones(line.secondHex), places, thick * 1.5)),
		])
	})
}
