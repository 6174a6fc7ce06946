import type { Hex } from '../../units/hex'
import { clustersOf } from './clusters'
import { depthsOf } from './depths'
import { type Cell, type Grid, gridOf } from './grid'
import { boxOf, type Heap, heapsOf, meanOf } from './heaps'
import { apart, hexOfLight, type Oklab, oklabOf } from './light'
import { merged } from './merged'
import type { PhotoSize, Pixels, Spot } from './photo'
import { smoothed } from './smoothed'
import { unblended } from './unblended'

/** A colour of a photo, its share of the opaque area, and a place where one can see it. */
export type FoundColour = { readonly hex: Hex; readonly share: number; readonly spot: Spot }

const mostColours = 8
/** Under this share of the picture a colour is a speck. */
const speckShare = 0.0005

type Region = { readonly heap: Heap; readonly oklab: Oklab; readonly at: readonly number[] }

function regionsOf({ cells, columns }: Grid, heaps: readonly Heap[]): { regions: Region[]; depths: number[] } {
	const ofBox = new Map(heaps.flatMap(({ boxes }, index) => boxes.map((box) => [box, index] as const)))
	const labels = cells.map((cell) => (cell === null ? -1 : (ofBox.get(boxOf(cell.oklab)) ?? -1)))
	const at: number[][] = heaps.map(() => [])
	for (const [index, label] of labels.entries()) at[label]?.push(index)
	const regions = heaps.map((heap, index) => ({ heap, oklab: oklabOf(meanOf(heap)), at: at[index] ?? [] }))
	return { regions, depths: depthsOf(labels, columns) }
}

/** Deeper counts up to here: beyond, a colour nearer the region's own is worth more. */
const deepEnough = 6

function spotIn({ at, oklab }: Region, { columns, rows, cells }: Grid, depths: readonly number[]): Spot {
	const inside = (index: number): number => {
		const [x, y] = [index % columns, Math.floor(index / columns)]
		return Math.min(deepEnough, depths[index] ?? 0, x + 1, y + 1, columns - x, rows - y)
	}
	let [best, least] = [0, Number.POSITIVE_INFINITY]
	for (const index of at) {
		const cost = apart(cells[index]?.oklab ?? oklab, oklab) - 0.01 * inside(index)
		if (cost < least) [best, least] = [index, cost]
	}
	return { x: ((best % columns) + 0.5) / columns, y: (Math.floor(best / columns) + 0.5) / rows }
}

/** The largest clusters that are no specks, largest first. */
function heapsIn(cells: readonly Cell[]): Heap[] {
	const all = merged(clustersOf(heapsOf(cells)))
	const clear = all.filter(({ count }) => count >= speckShare * cells.length)
	return merged(clear, mostColours)
		.toSorted((a, b) => b.count - a.count)
		.slice(0, mostColours)
}

/**
 * The colours of a front from its photo, at most eight, largest area first, each at least ΔE00 5 from the others:
 * averaged in linear light, k-means in OKLab, like ones merged, specks dropped. The same photo gives the same answer.
 * None where nothing is opaque. What fills less than about a seven-hundredth of the photo is not found, and light and
 * deep shadow of one wall may come as two colours: the designer adds and drops by eye.
 * @throws when there are not as many pixels as `size` says
 */
export function siteColours(pixels: Pixels, size: PhotoSize): FoundColour[] {
	const grid = unblended(smoothed(gridOf(pixels, size)))
	const cells = grid.cells.filter((cell) => cell !== null)
	const { regions, depths } = regionsOf(grid, heapsIn(cells))
	return regions.map((region) => ({
		hex: hexOfLight(meanOf(region.heap)),
		share: region.heap.count / cells.length,
		spot: spotIn(region, grid, depths),
	}))
}
