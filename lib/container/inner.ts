import { isRound, type Vessel } from './card'

/** Of an urn's height, what its bowl takes; foot and stem have the rest (common practice, no published source). */
export const urnBowlShare = 0.6

/** Height of the part that is hollow, wall included: the whole vessel, or the bowl of an urn. */
export const bodyCm = ({ shape, heightCm }: Vessel): number => (shape === 'urn' ? heightCm * urnBowlShare : heightCm)

/** What is left inside walls and floor, in cm. Of a round vessel both depths are the diameter. */
export type Inner = {
	readonly topCm: number
	readonly topDepthCm: number
	readonly bottomCm: number
	readonly bottomDepthCm: number
	readonly heightCm: number
}

/** Inner measures at rim and inner floor. The floor of an urn's bowl is as wide as its foot. */
export function inner(vessel: Vessel): Inner {
	const { topCm, topDepthCm, bottomCm, bottomDepthCm, wallCm } = vessel
	const within = (outerCm: number) => outerCm - 2 * wallCm
	return {
		topCm: within(topCm),
		topDepthCm: within(topDepthCm ?? topCm),
		bottomCm: within(bottomCm),
		bottomDepthCm: within(bottomDepthCm ?? bottomCm),
		heightCm: bodyCm(vessel) - wallCm,
	}
}

/** Inner perimeter at the rim, in cm: what spillers hang over. */
export function rimCm(vessel: Vessel): number {
	const { topCm, topDepthCm } = inner(vessel)
	return isRound(vessel.shape) ? Math.PI * topCm : 2 * (topCm + topDepthCm)
}
