import { isLong, placesAlong, viewedFaces } from '../../container/along'
import { inner } from '../../container/inner'
import { innerOpeningCm2 } from '../../container/soil'
import { visible } from '../../container/visible'
import { halfUp, nearestOdd } from '../../units/round'
import { isCluster } from '../planned'
import type { Grows } from '../recipe'
import type { DesignMaterial } from '../traits'
import { openingRatio, type Pot, rimRatio } from './reference'
import { plantsFor } from './spacing'

/** Stems stand in a middle that widens more slowly than the opening (common practice). */
const stemsPower = 0.75
const cmAStemGroup = 40
const mostOdd = 7

/** A material that is bought by weight or volume is counted in thousandths, anything else whole. */
export const isMeasured = (material: DesignMaterial | undefined): boolean =>
	material?.unit === 'kg' || material?.unit === 'litre'

/** Half up, and at least one of what is there at all. */
export function rounded(exact: number, material: DesignMaterial | undefined): number {
	if (!(exact > 0)) return 0
	return isMeasured(material) ? Math.max(0.001, halfUp(exact, 1000)) : Math.max(1, halfUp(exact))
}

/** A group on one face: odd up to seven; as it was written where the pot is as large as the reference. */
function group(count: number, ratio: number): number {
	const grown = count * Math.sqrt(ratio)
	if (ratio === 1 && Number.isInteger(count)) return count
	return grown > mostOdd ? halfUp(grown) : nearestOdd(grown)
}

function onFaces(count: number, pot: Pot, material: DesignMaterial | undefined): number {
	const ratio = openingRatio(pot)
	const faces = viewedFaces(pot, pot.stands)
	if (material !== undefined && isCluster(material)) return count * faces
	return faces * (isMeasured(material) ? count * Math.sqrt(ratio) : group(count, ratio))
}

/** Where a plant's card gives no spacing, its spread; where neither, one plant. */
function spaced(share: number, pot: Pot, material: DesignMaterial | undefined): number {
	const apart = material?.spacingCm ?? material?.acrossCm ?? null
	return apart === null || apart <= 0 ? 1 : plantsFor(innerOpeningCm2(pot), share, apart)
}

/** What a line comes to in a pot, before it is rounded. Of held lines see `grow`. */
export function exactCount(
	grows: Exclude<Grows, { way: 'held' }>,
	pot: Pot,
	material: DesignMaterial | undefined,
): number {
	if (grows.way === 'spacing') return grows.share === 0 ? 0 : spaced(grows.share, pot, material)
	const { count, way } = grows
	if (count === 0) return 0
	switch (way) {
		case 'fixed':
			return isLong(pot) && !isMeasured(material) ? placesAlong(pot) : count
		case 'stems':
			return count * (isLong(pot) ? inner(pot).topCm / cmAStemGroup : openingRatio(pot) ** stemsPower)
		case 'greens':
			return count * openingRatio(pot) * visible(pot, pot.stands).greens
		case 'rim':
			return count * rimRatio(visible(pot, pot.stands).rimCm)
		case 'faces':
			return onFaces(count, pot, material)
		default:
			return way satisfies never
	}
}
