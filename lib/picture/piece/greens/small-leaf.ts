import type { Dice, DrawPiece } from '../../piece'
import { thread } from '../growth/band'
import { drop } from '../growth/leaf'
import { roll, side, times } from '../growth/roll'
import { size } from '../growth/size'
import { spray } from '../growth/spray'
import { type Spot, spotAt } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill, pen } from '../ink/layer'
import type { Line } from '../ink/shape'
import { barkBrown, tones } from '../ink/tones'

type Leaflet = { readonly whole: Line; readonly heart: Line }

/** Leaves to both sides of a twig and one at its tip; their hearts lie within them. */
const leaflets = (twig: readonly Spot[], count: number, longCm: number, dice: Dice): Leaflet[] =>
	times(count, (t, index) => {
		const { at, heading } = spotAt(twig, 0.12 + 0.88 * t)
		const out = heading + (index === count - 1 ? 0 : side(index) * roll(dice, 0.55, 1.1))
		const long = longCm * roll(dice, 0.85, 1.1)
		return { whole: drop(at, out, long, long * 0.64), heart: drop(at, out - 0.1, long * 0.7, long * 0.36) }
	})

/** A twig of boxwood or holly; the second colour is the edge of its leaves. */
export const smallLeaf: DrawPiece = (line, dice) => {
	const lengthCm = size(line.lengthCm, 30)
	const spread = Math.sqrt(size(line.acrossCm, lengthCm * 0.6, lengthCm * 0.35, lengthCm * 1.1) / lengthCm / 0.6)
	const { light, base, dark } = tones(line.hex)
	const edge = line.secondHex
	const twigCm = (t: number) => lengthCm * (0.5 - 0.22 * t)
	const out = [0.5 * spread, 0.7 * spread] as const
	return times(3, () => {
		const { main, twigs } = spray(
			{ lengthCm: lengthCm * 0.92, twigs: 5, from: 0.14, to: 0.68, out, back: 0.14, twigCm, bend: 0.07 },
			dice,
		)
		const all = [...twigs, main].flatMap((twig) => leaflets(twig, 9, Math.min(4.2, lengthCm * 0.1), dice))
		const third = (which: number, part: keyof Leaflet) =>
			all.filter((_, index) => index % 3 === which).map((each) => each[part])
		return drawn([
			pen(barkBrown, lengthCm * 0.014, [main, ...twigs].map(thread)),
			fill(dark, third(0, 'whole')),
			fill(edge ?? base, third(1, 'whole')),
			fill(base, edge === null ? [] : third(1, 'heart')),
			fill(edge ?? base, third(2, 'whole')),
			fill(edge === null ? light : base, third(2, 'heart')),
		])
	})
}
