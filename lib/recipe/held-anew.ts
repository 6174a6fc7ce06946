import type { MaterialId } from '../units/id'
import type { Grows } from './recipe'

/** How a line grows when the material that it holds goes by another: held by nothing where that was left out. */
export function heldAnew(grows: Grows, others: ReadonlyMap<MaterialId, MaterialId | null>): Grows {
	if (grows.way !== 'held' || grows.holds === null) return grows
	const other = others.get(grows.holds)
	return other === undefined ? grows : { ...grows, holds: other }
}
