import { type Cell, cellOf, type Grid } from './grid'
import { apart, type Oklab } from './light'

/** Cells each way that are looked at. */
const reach = 2
/** Distance in OKLab up to which a neighbour is taken for the same surface: about ΔE00 5. */
const sameSurface = 0.045

function cellsRound(index: number, { columns, rows, cells }: Grid): Cell[] {
	const [x, y] = [index % columns, Math.floor(index / columns)]
	const found: Cell[] = []
	for (let row = Math.max(0, y - reach); row <= Math.min(rows - 1, y + reach); row++)
		for (let column = Math.max(0, x - reach); column <= Math.min(columns - 1, x + reach); column++) {
			const cell = cells[row * columns + column]
			if (cell) found.push(cell)
		}
	return found
}

function meanOfLike(of: Oklab, round: readonly Cell[]): Cell {
	let [red, green, blue, count] = [0, 0, 0, 0]
	for (const { light, oklab } of round) {
		if (apart(of, oklab) > sameSurface) continue
		red += light.red
		green += light.green
		blue += light.blue
		count += 1
	}
	return cellOf({ red: Math.round(red / count), green: Math.round(green / count), blue: Math.round(blue / count) })
}

/**
 * Each cell becomes the mean of those round it that are like it: noise and the grain of a wall go, edges stay.
 * Source: J.-S. Lee, "Digital image smoothing and the sigma filter", 1983.
 */
export const smoothed = (grid: Grid): Grid => ({
	...grid,
	cells: grid.cells.map((cell, index) => cell && meanOfLike(cell.oklab, cellsRound(index, grid))),
})
