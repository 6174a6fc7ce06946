import { nearestOdd } from '../units/round'
import { isRound, type Stand, type Vessel } from './card'
import { inner } from './inner'

/** A box of at least twice the length of its depth inside is planted along its front, not round its middle. */
export function isLong(vessel: Vessel): boolean {
	const { topCm, topDepthCm } = inner(vessel)
	return !isRound(vessel.shape) && topCm >= 2 * topDepthCm
}

const cmAPlace = 35

/** Places along the front of a long box: the odd number nearest to its inner length ÷ 35 cm (common practice). */
export const placesAlong = (vessel: Vessel): number => nearestOdd(inner(vessel).topCm / cmAPlace)

/** Common practice, no published source. */
const roundFaces: Record<Stand, number> = { 'all round': 3, 'against a wall': 1, 'in a corner': 2 }
const squareFaces: Record<Stand, number> = { 'all round': 4, 'against a wall': 1, 'in a corner': 2 }

/** How many faces of it are looked at: a long box is seen by its front, wherever it stands. */
export function viewedFaces(vessel: Vessel, stands: Stand): number {
	if (isLong(vessel)) return placesAlong(vessel)
	return (isRound(vessel.shape) ? roundFaces : squareFaces)[stands]
}
