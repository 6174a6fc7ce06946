import { labDifference, labOf } from '../difference'
import { type Heap, meanOf, together } from './heaps'
import { hexOfLight } from './light'

/** ΔE00 under which two areas are one colour to the eye (common practice, no published source). */
const oneColour = 5
const relatedColours = 10

type Pair = { readonly one: Heap; readonly other: Heap; readonly apart: number }

const labOfHeap = (heap: Heap) => labOf(hexOfLight(meanOf(heap)))

function nearestPair(heaps: readonly Heap[]): Pair | undefined {
	const known = heaps.map((heap) => ({ heap, lab: labOfHeap(heap) }))
	let nearest: Pair | undefined
	for (const [index, one] of known.entries())
		for (const other of known.slice(index + 1)) {
			const apart = labDifference(one.lab, other.lab)
			if (nearest === undefined || apart < nearest.apart) nearest = { one: one.heap, other: other.heap, apart }
		}
	return nearest
}

/**
 * Clusters of like colour made one, the nearest two first: until all are `oneColour` apart, and while there are more
 * than `most` even those that are not `relatedColours` apart, so that a door handle is not pushed out by the lights and
 * shadows of a wall.
 */
export function merged(heaps: readonly Heap[], most = Number.POSITIVE_INFINITY): Heap[] {
	const pair = nearestPair(heaps)
	if (pair === undefined || pair.apart >= (heaps.length > most ? relatedColours : oneColour)) return [...heaps]
	const rest = heaps.filter((heap) => heap !== pair.one && heap !== pair.other)
	return merged([...rest, together(pair.one, pair.other)], most)
}
