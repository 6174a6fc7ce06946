import type { Dice, DrawPiece } from '../../piece'
import { roll, times } from '../growth/roll'
import { size } from '../growth/size'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import type { Point } from '../ink/point'
import { closed, type Line, line } from '../ink/shape'
import { type Tones, tones } from '../ink/tones'

/** From the knot: `u` in half widths away from it, `v` up in half widths. */
type Place = (u: number, v: number) => Point

/** The outside of a loop, as it comes over to the viewer. */
const loop = (at: Place): Line =>
	closed(
		at(0.05, -0.1),
		[at(0.3, -0.32), at(0.62, -0.4), at(0.86, -0.3)],
		[at(1.04, -0.2), at(1.06, 0.3), at(0.92, 0.44)],
		[at(0.7, 0.58), at(0.3, 0.3), at(0.05, 0.11)],
	)

/** What shows of its inside. */
const hollow = (at: Place): Line =>
	closed(
		at(0.3, 0.1),
		[at(0.5, 0.02), at(0.72, -0.06), at(0.84, -0.14)],
		[at(0.94, 0.02), at(0.94, 0.22), at(0.87, 0.31)],
		[at(0.72, 0.34), at(0.5, 0.24), at(0.3, 0.1)],
	)

/** A tail, its end cut into a notch. */
const tail = (at: Place, reach: number, down: number): Line =>
	closed(
		at(0.02, -0.02),
		[at(0.1, -0.3), at(reach * 0.9, -down * 0.55), at(reach, -down)],
		[at(reach + 0.15, -down + 0.13)],
		[at(reach + 0.36, -down + 0.1)],
		[at(reach + 0.3, -down * 0.55), at(0.42, -0.2), at(0.12, 0.04)],
	)

const folds = (at: Place): Line[] => [
	line(at(0.14, 0.06), [at(0.3, 0.16), at(0.46, 0.3)]),
	line(at(0.14, -0.05), [at(0.34, -0.14), at(0.56, -0.3)]),
	line(at(0.14, 0), [at(0.24, 0.02), at(0.36, 0.06)]),
]

/** The knot from `from` to its right edge. */
const knot = (at: Place, from: number): Line =>
	closed(
		at(from, -0.16),
		[at(0.04, -0.2), at(0.13, -0.15)],
		[at(0.17, -0.05), at(0.17, 0.08), at(0.13, 0.17)],
		[at(0.04, 0.22), at(from, 0.18)],
	)

/** How far the ends of its tails lie below the knot. */
function bow(silk: Tones, edge: Layer['colour'] | null, half: number, down: number, dice: Dice): Layer[] {
	const left: Place = (u, v) => [-half * u, -half * (down + v)]
	const right: Place = (u, v) => [half * u, -half * (down + v)]
	const near = tail(left, roll(dice, 0.2, 0.42), down * roll(dice, 0.92, 1))
	const far = tail(right, roll(dice, 0.2, 0.42), down)
	const loops = [loop(left), loop(right)]
	return [
		fill(silk.dark, [far]),
		fill(silk.base, [near, ...loops]),
		fill(silk.deep, [hollow(left), hollow(right)]),
		edge === null ? pen(silk.light, half * 0.022, loops) : pen(edge, half * 0.045, [...loops, near, far]),
		pen(silk.dark, half * 0.026, [...folds(left), ...folds(right)]),
		fill(silk.base, [knot(right, -0.14)]),
		fill(silk.dark, [knot(right, 0.03)]),
		pen(silk.light, half * 0.035, [line(left(0.08, 0.12), [left(0.11, 0.04), left(0.09, -0.06)])]),
	]
}

/** A bow: two loops, a knot and two tails that end at the foot; the second colour edges it. */
export const ribbon: DrawPiece = (line_, dice) => {
	const acrossCm = size(line_.acrossCm, 20, 2, 80)
	const heightCm = size(line_.lengthCm, acrossCm * 0.95, acrossCm * 0.6, acrossCm * 2)
	const down = (2 * heightCm) / acrossCm - 0.46
	return times(3, () => drawn(bow(tones(line_.hex), line_.secondHex, acrossCm / 2, down, dice), { fitCm: heightCm }))
}
