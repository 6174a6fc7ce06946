import { type Stand, usualHeadspaceCm, usualWallCm, type Vessel } from '../../container/card'
import { rimCm } from '../../container/inner'
import { innerOpeningCm2 } from '../../container/soil'

/** Where a recipe is grown to: the measures of a vessel, and how it stands. */
export type Pot = Vessel & { readonly stands: Stand }

/** The container that recipes are written for: 18 inches across and high, resin, seen all round. */
export const reference: Pot = {
	shape: 'round',
	topCm: 45.72,
	topDepthCm: null,
	bottomCm: 33.02,
	bottomDepthCm: null,
	heightCm: 45.72,
	wallCm: usualWallCm.resin,
	headspaceCm: usualHeadspaceCm,
	soilDepthCm: null,
	stands: 'all round',
}

const referenceOpeningCm2 = innerOpeningCm2(reference)
const referenceRimCm = rimCm(reference)

/** Inner opening as a part of the reference's. */
export const openingRatio = (vessel: Vessel): number => innerOpeningCm2(vessel) / referenceOpeningCm2

/** A length of rim as a part of the reference's. */
export const rimRatio = (seenCm: number): number => seenCm / referenceRimCm
