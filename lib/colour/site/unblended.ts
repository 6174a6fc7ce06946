import type { Cell, Grid } from './grid'
import { apart } from './light'

/** Right, down and the two diagonals; the other way is the negative. */
const ways = [
	[1, 0],
	[0, 1],
	[1, 1],
	[1, -1],
] as const
const steps = [1, 2] as const

/** Distance in OKLab beyond which a cell is not of its neighbour's surface. */
const otherSurface = 0.03
/** How much longer than straight the way by a blend may be: light is blended in light, and OKLab is a little bent. */
const bend = 1.2

function isBlend(cell: Cell, one: Cell, other: Cell): boolean {
	const [there, back] = [apart(one.oklab, cell.oklab), apart(cell.oklab, other.oklab)]
	if (there < otherSurface || back < otherSurface) return false
	return there + back < bend * apart(one.oklab, other.oklab)
}

function isBetween(index: number, cell: Cell, { columns, rows, cells }: Grid): boolean {
	const [x, y] = [index % columns, Math.floor(index / columns)]
	const at = (column: number, row: number): Cell | null =>
		column < 0 || row < 0 || column >= columns || row >= rows ? null : (cells[row * columns + column] ?? null)
	return ways.some(([right, down]) =>
		steps.some((there) => {
			const one = at(x + there * right, y + there * down)
			return (
				one !== null &&
				steps.some((back) => {
					const other = at(x - back * right, y - back * down)
					return other !== null && isBlend(cell, one, other)
				})
			)
		}),
	)
}

/** Without the cells along a border, where two colours run together into a third that is nowhere on the front. */
export function unblended(grid: Grid): Grid {
	const cells = grid.cells.map((cell, index) => (cell !== null && isBetween(index, cell, grid) ? null : cell))
	return cells.some((cell) => cell !== null) ? { ...grid, cells } : grid
}
