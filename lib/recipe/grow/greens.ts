import { halfUp } from '../../units/round'
import { roles } from '../material'
import { exactCount, isMeasured } from './count'
import type { Pot } from './reference'
import { type Part, shareOut } from './share-out'
import type { Counts, Materials, Numbered } from './to-grow'

function part({ line: { grows, kept, material }, at }: Numbered, pot: Pot, materials: Materials): Part[] {
	const found = materials.get(material)
	if (grows.way !== 'greens' || grows.count === 0 || kept !== undefined || isMeasured(found)) return []
	const weight = exactCount(grows, pot, found)
	return [{ at, weight, tie: `${material} ${grows.count}` }]
}

/** Greens that are counted whole: the total of each role is rounded once, then split over its kinds. */
export function greens(lines: readonly Numbered[], pot: Pot, materials: Materials): Counts {
	const shares = roles.map((role) => {
		const parts = lines.filter(({ line }) => line.role === role).flatMap((each) => part(each, pot, materials))
		const total = parts.reduce((sum, { weight }) => sum + weight, 0)
		return shareOut(Math.max(parts.length, halfUp(total)), parts)
	})
	return new Map(shares.flatMap((each) => [...each]))
}
