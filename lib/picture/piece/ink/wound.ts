import type { Point } from './point'
import type { Leg, Line, Shape } from './shape'

/** Twice the area within its points; below 0 where it runs left about as it is seen. */
function area({ from, legs }: Line): number {
	const points = [from, ...legs.flat()]
	return points.reduce((sum, [x, y], index) => {
		const [nextX, nextY] = points[(index + 1) % points.length] ?? from
		return sum + x * nextY - nextX * y
	}, 0)
}

const backwards = (to: Point, leg: Leg): Leg => {
	const [one, two, three] = leg
	if (two === undefined) return [to]
	return three === undefined ? [one, to] : [two, one, to]
}

/** From its last point to its first. */
function reversed({ from, legs, closed }: Line): Line {
	const points = [from, ...legs.map((leg) => leg.at(-1) ?? from)]
	return {
		from: points.at(-1) ?? from,
		legs: legs.map((leg, index) => backwards(points[index] ?? from, leg)).toReversed(),
		closed,
	}
}

/** Right about, as a disc runs: where shapes of one path overlap, none cuts a hole into another. */
export const wound = (shape: Shape): Shape => ('centre' in shape || area(shape) >= 0 ? shape : reversed(shape))
