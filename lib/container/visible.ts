import { isRound, type Stand, type Vessel } from './card'
import { inner, rimCm } from './inner'

/** Parts of the whole from 0 to 1, and the rim that is seen in cm. */
export type Visible = { readonly greens: number; readonly rim: number; readonly rimCm: number }

/** Common practice, no published source. */
const greensSeen: Record<Stand, number> = { 'all round': 1, 'against a wall': 0.8, 'in a corner': 0.65 }
const roundRimSeen: Record<Stand, number> = { 'all round': 1, 'against a wall': 0.6, 'in a corner': 0.4 }

/** Of a box: all of it, its front and two ends, or its front and one end. */
function boxRimSeen(vessel: Vessel, stands: Stand): number {
	const { topCm: front, topDepthCm: end } = inner(vessel)
	switch (stands) {
		case 'all round':
			return 1
		case 'against a wall':
			return (front + 2 * end) / rimCm(vessel)
		case 'in a corner':
			return (front + end) / rimCm(vessel)
		default:
			return stands satisfies never
	}
}

/** How much of greens and rim is seen of a vessel that stands so. */
export function visible(vessel: Vessel, stands: Stand): Visible {
	const rim = isRound(vessel.shape) ? roundRimSeen[stands] : boxRimSeen(vessel, stands)
	return { greens: greensSeen[stands], rim, rimCm: rim * rimCm(vessel) }
}
