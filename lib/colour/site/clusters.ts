import { type Heap, type Point, together } from './heaps'
import type { Oklab } from './light'

/** More than a front has colours, so that a door handle gets a cluster of its own; what is too many is merged after. */
const mostClusters = 24
const mostRounds = 30
/** The same for every photo: the same photo, the same answer. */
const seed = 20_261

/** Linear congruential generator, 32 bits. Source: Numerical Recipes, 7.1. */
function diceFrom(start: number): () => number {
	let state = start
	return () => {
		state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
		return state / 2 ** 32
	}
}

const squared = (a: Oklab, b: Oklab): number => (a.l - b.l) ** 2 + (a.a - b.a) ** 2 + (a.b - b.b) ** 2

function pick(weights: readonly number[], dice: () => number): number {
	let left = dice() * weights.reduce((sum, weight) => sum + weight, 0)
	const found = weights.findIndex((weight) => {
		left -= weight
		return left < 0
	})
	return found === -1 ? weights.findLastIndex((weight) => weight > 0) : found
}

/** k-means++ (Arthur and Vassilvitskii 2007): each further seed with a chance as its squared distance from those before. */
function seedsOf(points: readonly Point[]): Oklab[] {
	const dice = diceFrom(seed)
	const seeds: Oklab[] = []
	let chances = points.map(() => 1)
	while (seeds.length < mostClusters) {
		const found = points[pick(chances, dice)]
		if (found === undefined) return seeds
		seeds.push(found.oklab)
		const apart = (point: Point) => Math.min(...seeds.map((each) => squared(each, point.oklab)))
		chances = points.map(apart)
	}
	return seeds
}

function nearestOf(centres: readonly Oklab[], of: Oklab): number {
	let [nearest, least] = [0, Number.POSITIVE_INFINITY]
	for (const [index, centre] of centres.entries()) {
		const apart = squared(centre, of)
		if (apart < least) [nearest, least] = [index, apart]
	}
	return nearest
}

function centreOf(points: readonly Point[], old: Oklab): Oklab {
	const mean = (of: (point: Point) => number) => points.reduce((sum, point) => sum + of(point), 0) / points.length
	if (points.length === 0) return old
	return { l: mean(({ oklab }) => oklab.l), a: mean(({ oklab }) => oklab.a), b: mean(({ oklab }) => oklab.b) }
}

function parted(points: readonly Point[], centres: readonly Oklab[]): Point[][] {
	const parts: Point[][] = centres.map(() => [])
	for (const point of points) parts[nearestOf(centres, point.oklab)]?.push(point)
	return parts
}

/**
 * k-means over heaps in OKLab, where a heap counts once however high it is: a sign for as much as a wall. Each cluster is
 * the heap of its heaps; none is empty.
 */
export function clustersOf(points: readonly Point[]): Heap[] {
	let centres = seedsOf(points)
	for (let round = 0; round < mostRounds; round++) {
		const moved = parted(points, centres).map((part, index) => centreOf(part, centres[index] ?? { l: 0, a: 0, b: 0 }))
		const isStill = moved.every((centre, index) => squared(centre, centres[index] ?? centre) < 1e-12)
		centres = moved
		if (isStill) break
	}
	return parted(points, centres)
		.map((part) => part.map(({ heap }) => heap))
		.flatMap(([first, ...rest]) => (first === undefined ? [] : rest.reduce(together, first)))
}
