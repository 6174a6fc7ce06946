import { type Light, lightOf, type Oklab, oklabOf } from './light'
import { checkPhoto, layoutOf, type PhotoSize, type Pixels } from './photo'

export type Cell = { readonly light: Light; readonly oklab: Oklab }

export const cellOf = (light: Light): Cell => ({ light, oklab: oklabOf(light) })

/** A photo in cells, each the mean of its pixels; null where nothing opaque is. */
export type Grid = { readonly columns: number; readonly rows: number; readonly cells: readonly (Cell | null)[] }

/** Cells along the longer side: enough to see a door handle in a picture of a front. */
const mostCells = 160

/** Light times alpha, and alpha, summed per cell. */
type Sums = Record<'red' | 'green' | 'blue' | 'alpha' | 'pixels', Float64Array>

/** Adds up one row of pixels, which starts at `start`, into cells from `first` on. */
function addRow(pixels: Pixels, start: number, size: PhotoSize, side: number, first: number, to: Sums): void {
	const at = layoutOf(size.channels)
	for (let x = 0, pixel = start; x < size.width; x++, pixel += size.channels) {
		const cell = first + Math.floor(x / side)
		const alpha = at.alpha < 0 ? 255 : (pixels[pixel + at.alpha] ?? 0)
		to.red[cell] = (to.red[cell] ?? 0) + alpha * (lightOf[pixels[pixel + at.red] ?? 0] ?? 0)
		to.green[cell] = (to.green[cell] ?? 0) + alpha * (lightOf[pixels[pixel + at.green] ?? 0] ?? 0)
		to.blue[cell] = (to.blue[cell] ?? 0) + alpha * (lightOf[pixels[pixel + at.blue] ?? 0] ?? 0)
		to.alpha[cell] = (to.alpha[cell] ?? 0) + alpha
		to.pixels[cell] = (to.pixels[cell] ?? 0) + 1
	}
}

/**
 * Averages in linear light (what a lens out of focus would do), weighted by alpha. A cell less than half opaque is none.
 * @throws when there are not as many pixels as `size` says
 */
export function gridOf(pixels: Pixels, size: PhotoSize): Grid {
	checkPhoto(pixels, size)
	const side = Math.ceil(Math.max(size.width, size.height) / mostCells)
	const [columns, rows] = [Math.ceil(size.width / side), Math.ceil(size.height / side)]
	const none = () => new Float64Array(columns * rows)
	const sums = { red: none(), green: none(), blue: none(), alpha: none(), pixels: none() }
	for (let y = 0; y < size.height; y++)
		addRow(pixels, y * size.width * size.channels, size, side, Math.floor(y / side) * columns, sums)
	const cells = Array.from(sums.alpha, (alpha, index) => {
		if (alpha * 2 < 255 * (sums.pixels[index] ?? 0)) return null
		const mean = (of: Float64Array) => Math.round((of[index] ?? 0) / alpha)
		return cellOf({ red: mean(sums.red), green: mean(sums.green), blue: mean(sums.blue) })
	})
	return { columns, rows, cells }
}
