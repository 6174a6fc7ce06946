import {
	convertLrgbToRgb,
	convertRgbToLrgb,
	filterDeficiencyDeuter,
	filterDeficiencyProt,
	filterDeficiencyTrit,
} from 'culori'
import type { Hex } from '../../units/hex'
import { hexOf, rgbOf } from '../rgb'
import type { Deficiency } from './deficiency'

const filters = {
	protan: filterDeficiencyProt(1),
	deutan: filterDeficiencyDeuter(1),
	tritan: filterDeficiencyTrit(1),
}

/**
 * About how a colour looks to somebody whose cones of one kind are missing altogether; most who have a deficiency have
 * less of it. Source: Machado, Oliveira and Fernandes, IEEE TVCG 15(6), 2009, severity 1.0. Their matrices act on light,
 * and the library would multiply what it is given: so it is given linear values.
 */
export function seenAs(of: Hex, deficiency: Deficiency): Hex {
	const { r, g, b } = convertRgbToLrgb(rgbOf(of))
	return hexOf(convertLrgbToRgb(filters[deficiency]({ mode: 'rgb', r, g, b })))
}

const primaries = [
	[1, 0, 0],
	[0, 1, 0],
	[0, 0, 1],
] as const

/** The same for a whole picture: three rows of three, to be multiplied with linear red, green and blue. */
export function seenMatrix(deficiency: Deficiency): number[][] {
	const columns = primaries.map(([r, g, b]) => filters[deficiency]({ mode: 'rgb', r, g, b }))
	return (['r', 'g', 'b'] as const).map((channel) => columns.map((column) => column[channel]))
}
