import { ahead, between, type Point } from '../ink/point'
import { closed, type Leg, type Line, line } from '../ink/shape'
import type { Spot } from './walk'

/** A curve that is led by the points and passes midway between them. */
function smooth(points: readonly Point[]): readonly Leg[] {
	const last = points.at(-1) ?? [0, 0]
	if (points.length < 3) return [[last]]
	return points.slice(1, -1).map((point, index): Leg => {
		const next = points[index + 2] ?? last
		return [point, index + 3 === points.length ? next : between(point, next, 0.5)]
	})
}

/** How far off the stem, in cm to its right, at `t`. */
type Offset = (t: number) => number

const edge = (spots: readonly Spot[], offset: Offset): readonly Point[] =>
	spots.map(({ at, heading, t }) => ahead(at, heading + Math.PI / 2, offset(t)))

/** What lies between two offsets from a stem, the left one the smaller. */
export function band(spots: readonly Spot[], left: Offset, right: Offset): Line {
	const up = edge(spots, left)
	const down = edge(spots, right).toReversed()
	return closed(up[0] ?? [0, 0], ...smooth(up), [down[0] ?? [0, 0]], ...smooth(down))
}

/** A stem that is `foot` wide below and `tip` wide above. */
export const limb = (spots: readonly Spot[], foot: number, tip: number): Line => {
	const half = (t: number) => (foot + (tip - foot) * t) / 2
	return band(spots, (t) => -half(t), half)
}

/** The stem as a line of a pen. */
export const thread = (spots: readonly Spot[]): Line =>
	line(spots[0]?.at ?? [0, 0], ...smooth(spots.map(({ at }) => at)))
