import { between, diceOf, wobble } from '../pen/dice-of'
import type { Point } from '../pen/path'

/** A tile of stones that meets itself at its edges, in cm. */
export const [tileCm, highCm] = [158, 122]

/** Stones are wider than high: distances are measured in a wall that is pulled up by so much. */
const pull = 1.5

/** Keeps of `corners` what lies nearer to `own` than to `other`. */
function nearer(corners: readonly Point[], own: Point, other: Point): Point[] {
	const normal: Point = [other[0] - own[0], (other[1] - own[1]) * pull * pull]
	const middle: Point = [(own[0] + other[0]) / 2, (own[1] + other[1]) / 2]
	const beyond = ([x, y]: Point) => (x - middle[0]) * normal[0] + (y - middle[1]) * normal[1]
	return corners.flatMap((corner, index) => {
		const next = corners[(index + 1) % corners.length] ?? corner
		const [here, there] = [beyond(corner), beyond(next)]
		const share = here / (here - there)
		const cut: Point = [corner[0] + (next[0] - corner[0]) * share, corner[1] + (next[1] - corner[1]) * share]
		return [...(here <= 0 ? [corner] : []), ...(here * there < 0 ? [cut] : [])]
	})
}

const shifts = [-1, 0, 1].flatMap((x) => [-1, 0, 1].map((y): Point => [x * tileCm, y * highCm]))

function stonesFrom(seeds: readonly Point[]): Point[][] {
	const others = seeds.flatMap(([x, y]) => shifts.map(([dx, dy]): Point => [x + dx, y + dy]))
	return seeds.map((own) => {
		const [x, y] = own
		const start: Point[] = [
			[x - 60, y - 45],
			[x + 60, y - 45],
			[x + 60, y + 45],
			[x - 60, y + 45],
		]
		return others
			.filter(
				(other) => (other[0] !== x || other[1] !== y) && Math.abs(other[0] - x) < 120 && Math.abs(other[1] - y) < 90,
			)
			.reduce((corners, other) => nearer(corners, own, other), start)
	})
}

const centre = (corners: readonly Point[]): Point => [
	corners.reduce((sum, [x]) => sum + x, 0) / Math.max(1, corners.length),
	corners.reduce((sum, [, y]) => sum + y, 0) / Math.max(1, corners.length),
]

/** Drawn in from the joints by about `joint` cm, and nowhere quite the same. */
function worn(corners: readonly Point[], joint: number, seed: string): Point[] {
	const dice = diceOf(seed)
	const [x, y] = centre(corners)
	return corners.map(([cx, cy]): Point => {
		const far = Math.hypot(cx - x, cy - y)
		const keep = Math.max(0.3, 1 - (joint + wobble(dice, 0.4)) / Math.max(1, far))
		return [x + (cx - x) * keep, y + (cy - y) * keep]
	})
}

/** Corners so close together that rounding them would make a needle are taken as one. */
const merged = (corners: readonly Point[]): Point[] =>
	corners.filter(([x, y], index) => {
		const [px, py] = corners.at(index - 1) ?? [0, 0]
		return Math.hypot(x - px, y - py) > 2.2
	})

/** Fieldstones laid without courses: cells round scattered middles (Voronoi), worn round. */
export function stones(): Point[][] {
	const dice = diceOf('fieldstone')
	const [across, up] = [6, 7]
	const scattered = Array.from({ length: across * up }, (_, index): Point => {
		const [row, at] = [Math.floor(index / across), index % across]
		const x = ((at + (row % 2) / 2 + 0.25 + wobble(dice, 0.6)) * tileCm) / across
		return [x, ((row + 0.5 + wobble(dice, 0.55)) * highCm) / up]
	})
	const kept = scattered.filter(() => between(dice, 0, 1) > 0.13)
	return stonesFrom(kept).map((corners, index) => worn(merged(corners), 0.95, String(index)))
}
