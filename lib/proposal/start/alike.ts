import type { Vessel } from '../../container/card'
import { plantedAs } from '../../container/planted-as'
import { innerOpeningCm2 } from '../../container/soil'

const apart = (a: Vessel, b: Vessel): number => Math.abs(Math.log(innerOpeningCm2(a) / innerOpeningCm2(b)))

/** Of several the one most like a container: planted in the same way, then nearest in size; the first of those as near. */
export function mostAlike<T extends { readonly vessel: Vessel }>(to: Vessel, all: readonly T[]): T | undefined {
	const own = plantedAs(to)
	const other = ({ vessel }: T) => Number(plantedAs(vessel) !== own)
	return all.toSorted((a, b) => other(a) - other(b) || apart(a.vessel, to) - apart(b.vessel, to))[0]
}
