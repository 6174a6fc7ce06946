import type { Vessel } from '../container/card'
import { inner } from '../container/inner'
import { soilDepthCm } from '../container/soil'
import type { DesignMaterial } from './traits'

type Pot = Vessel & { readonly sillToGlassCm: number | null }

/** Above the rim, in cm. */
export type Band = { readonly lowCm: number; readonly bestCm: number; readonly highCm: number }

/** Common practice, no published source; agrees with the published 1.5 to 2 times a pot that is as wide as it is high. */
const band = { low: 1.2, best: 1.5, high: 2 } as const

/**
 * How high the tallest may stand above the rim: 1.2, 1.5 and 2 × √(height of the vessel × its smaller inner width),
 * and under a window no higher than the glass begins.
 */
export function heightBand(pot: Pot): Band {
	const { topCm, topDepthCm } = inner(pot)
	const base = Math.sqrt(pot.heightCm * Math.min(topCm, topDepthCm))
	const under = (cm: number) => Math.min(cm, pot.sillToGlassCm ?? Number.POSITIVE_INFINITY)
	return { lowCm: under(band.low * base), bestCm: under(band.best * base), highCm: under(band.high * base) }
}

/** How high the tallest looks best above the rim, in cm. */
export const tallestCm = (pot: Pot): number => heightBand(pot).bestCm

/** Common practice, no published source. */
export const leastHoldCm = 15
const holdPart = 0.2
const floorCm = 2

/** How deep something that rises so far above the soil has to stand in it, as far as the soil goes; cm. */
export const holdCm = (aboveSoilCm: number, soilDeepCm: number): number =>
	Math.max(0, Math.min(soilDeepCm - floorCm, Math.max(leastHoldCm, holdPart * aboveSoilCm)))

/** The most that a stem of `lengthCm` can show above the soil: what its own hold leaves of it. */
function aboveSoilCm(lengthCm: number, soilDeepCm: number): number {
	const held = Math.max(leastHoldCm, (lengthCm * holdPart) / (1 + holdPart))
	return lengthCm - Math.max(0, Math.min(soilDeepCm - floorCm, held))
}

type Piece = Pick<DesignMaterial, 'kind' | 'lengthCm'>

/** The most that a piece can rise above the rim, in cm; null where nobody has said how long it is. */
export function reachCm({ kind, lengthCm }: Piece, pot: Vessel): number | null {
	if (lengthCm === null) return null
	const above = kind === 'live' ? lengthCm : aboveSoilCm(lengthCm, soilDepthCm(pot))
	return Math.max(0, above - pot.headspaceCm)
}

/** How far a piece will rise above the rim, in cm: a plant as it grows, a stem cut to what looks best. */
export function standingCm(piece: Piece, pot: Pot): number | null {
	const reach = reachCm(piece, pot)
	return reach === null || piece.kind === 'live' ? reach : Math.min(reach, tallestCm(pot))
}
