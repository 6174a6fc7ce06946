import type { Cell } from './grid'
import { type Light, type Oklab, oklabOf } from './light'

/** Cells of about one colour: how many, the sum of their light, and the boxes of OKLab that they lie in. */
export type Heap = { readonly count: number; readonly sum: Light; readonly boxes: readonly number[] }

export const meanOf = ({ count, sum }: Heap): Light => ({
	red: Math.round(sum.red / count),
	green: Math.round(sum.green / count),
	blue: Math.round(sum.blue / count),
})

const plus = (a: Light, b: Light): Light => ({ red: a.red + b.red, green: a.green + b.green, blue: a.blue + b.blue })

export const together = (a: Heap, b: Heap): Heap => ({
	count: a.count + b.count,
	sum: plus(a.sum, b.sum),
	boxes: [...a.boxes, ...b.boxes],
})

/** Edges of a box of OKLab, about what one can just tell apart. */
const edge = { l: 0.02, a: 0.01, b: 0.01 }

export const boxOf = ({ l, a, b }: Oklab): number =>
	(Math.round(l / edge.l) * 256 + Math.round(a / edge.a) + 128) * 256 + Math.round(b / edge.b) + 128

export type Point = { readonly heap: Heap; readonly oklab: Oklab }

/** Cells heaped up by their box of OKLab, in an order that does not depend on where they lay. */
export function heapsOf(cells: readonly Cell[]): Point[] {
	const heaps = new Map<number, Heap>()
	for (const { light, oklab } of cells) {
		const box = boxOf(oklab)
		const { count, sum, boxes } = heaps.get(box) ?? { count: 0, sum: { red: 0, green: 0, blue: 0 }, boxes: [box] }
		heaps.set(box, { count: count + 1, sum: plus(sum, light), boxes })
	}
	return [...heaps].toSorted(([a], [b]) => a - b).map(([, heap]) => ({ heap, oklab: oklabOf(meanOf(heap)) }))
}
