import {
	convertLrgbToRgb,
	convertRgbToLrgb,
	filterDeficiencyDeuter,
	filterDeficiencyProt,
	filterDeficiencyTrit,
} from 'culori'
import type { Hex } from '../units/hex'
import { hexOf, rgbOf } from './rgb'

/** Red, green or blue cones missing. */
export const deficiencies = ['protan', 'deutan', 'tritan'] as const
export type Deficiency = (typeof deficiencies)[number]

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
