import { hexOf } from '@/lib/colour/rgb'
import type { Hex } from '@/lib/units/hex'
import type { Patch as PaintedPatch } from '../../lib/colour/site/paint'
import type { LabD50 } from './d50'

type Rgb = readonly [number, number, number]
type Patch = readonly [name: string, lab: LabD50, srgb: Rgb]

/** Name: Lab relative to D50 | sRGB (adapted by Bradford) from 0 to 1, rounded to 5 decimals. */
const rows = `
dark skin: 38.358, 13.802, 14.646 | 0.4587, 0.32007, 0.26381
light skin: 66.056, 17.737, 17.848 | 0.78017, 0.58196, 0.50774
blue sky: 50.09, -4.407, -22.51 | 0.35861, 0.48067, 0.61656
foliage: 43.204, -13.464, 21.73 | 0.34958, 0.42345, 0.25421
blue flower: 55.356, 8.891, -24.82 | 0.51295, 0.50413, 0.68919
bluish green: 70.7, -32.892, -0.24 | 0.36879, 0.74368, 0.67475
orange: 62.559, 35.135, 58.05 | 0.87373, 0.48743, 0.17204
purplish blue: 40.178, 9.551, -44.289 | 0.27056, 0.36069, 0.65797
moderate red: 51.711, 47.694, 16.857 | 0.78237, 0.32996, 0.38206
purple: 30.375, 21.131, -20.3 | 0.36026, 0.23316, 0.40645
yellow green: 72.492, -23.462, 57.07 | 0.62375, 0.74018, 0.24794
orange yellow: 71.963, 19.486, 67.998 | 0.90468, 0.63366, 0.15251
blue: 28.653, 15.6, -50.52 | 0.15435, 0.24383, 0.57707
green: 55.046, -38.088, 31.61 | 0.26389, 0.58138, 0.28686
red: 42.182, 54.893, 28.785 | 0.71382, 0.18067, 0.22093
yellow: 82.23, 4.048, 79.844 | 0.94048, 0.78357, 0.0881
magenta: 51.82, 49.787, -13.9 | 0.75574, 0.32886, 0.58478
cyan: 50.555, -23.758898108744773, -23.89989039008933 | 0.0009, 0.52057, 0.62881
white 9.5: 96.387, -0.404, 2.238 | 0.96175, 0.95968, 0.94203
neutral 8: 81.014, -0.57, 0.18 | 0.78488, 0.79009, 0.78735
neutral 6.5: 66.297, -0.434, -0.079 | 0.62855, 0.63293, 0.63241
neutral 5: 50.83, -0.687, -0.268 | 0.46911, 0.47606, 0.47621
neutral 3.5: 35.724, -0.521, -0.468 | 0.32496, 0.33054, 0.33226
black 2: 20.706, 0.025, -0.447 | 0.19463, 0.1954, 0.19795
`

const three = (text: string): Rgb => {
	const [one = Number.NaN, two = Number.NaN, last = Number.NaN] = text.split(',').map(Number)
	return [one, two, last]
}

/**
 * The 24 patches of the ColorChecker. Source: W3C, csswg-drafts, css-color-4/workings/Macbeth.txt, which takes the mean
 * of several charts measured by BabelColor. The cyan patch is there drawn into sRGB.
 */
export const patches: readonly Patch[] = rows
	.trim()
	.split('\n')
	.map((row): Patch => {
		const [name = '', values = ''] = row.split(': ')
		const [lab = '', srgb = ''] = values.split(' | ')
		return [name, three(lab), three(srgb)]
	})

/** The chart in three photos of eight patches each: no two of one photo are near each other. */
export const chartPhotos: readonly (readonly Hex[])[] = [0, 1, 2].map((first) =>
	patches.filter((_, index) => index % 3 === first).map(([, , [r, g, b]]) => hexOf({ r, g, b })),
)

/** Eight patches in two rows, edge to edge, over 400 × 300 pixels. */
export const laid = (colours: readonly string[]): PaintedPatch[] =>
	colours.map((colour, index) => ({ colour, at: [(index % 4) * 100, Math.floor(index / 4) * 150, 100, 150] }))
