import type { Vessel } from './card'
import { inner } from './inner'
import { betweenCm3, type Solid, sectionCm2 } from './solid'

const hollow = (vessel: Vessel): Solid => ({ shape: vessel.shape, ...inner(vessel) })

/** Heights above the inner floor between which the soil lies, in cm. */
function soilLevels(vessel: Vessel): { from: number; to: number } {
	const to = inner(vessel).heightCm - vessel.headspaceCm
	return {
		from: vessel.soilDepthCm === null ? 0 : Math.max(0, to - vessel.soilDepthCm),
		to,
	}
}

/** From the top of the soil to what it rests on, in cm; 0 where none fits. */
export function soilDepthCm(vessel: Vessel): number {
	const { from, to } = soilLevels(vessel)
	return Math.max(0, to - from)
}

/** Inner area at the rim, in cm². */
export const innerOpeningCm2 = (vessel: Vessel): number => sectionCm2(hollow(vessel), inner(vessel).heightCm)

/** Inner area at the rim, in whole cm². */
export const openingCm2 = (vessel: Vessel): number => Math.round(innerOpeningCm2(vessel))

/** Soil that the vessel holds between its (false) bottom and the headspace, in cm³; of an urn its bowl alone has any. */
export function soilCm3(vessel: Vessel): number {
	const { from, to } = soilLevels(vessel)
	return betweenCm3(hollow(vessel), from, to)
}

/** The same in litres, to one decimal. */
export const soilLitres = (vessel: Vessel): number => Math.round(soilCm3(vessel) / 100) / 10
