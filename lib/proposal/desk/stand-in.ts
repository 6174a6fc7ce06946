import type { Kind, Role, Unit } from '../../recipe/material'
import type { Hex } from '../../units/hex'
import type { MaterialId } from '../../units/id'

/** A material that can stand in for another, as the desk shows it. */
export type StandIn = {
	readonly id: MaterialId
	readonly name: string
	readonly hex: Hex
	readonly role: Role
	readonly kind: Kind
	readonly unit: Unit
	/** "14 in stock, a colour very near it, 2 in shorter" */
	readonly why: string
	/** Its units for one unit of the other: 1 where both are counted alike, else so that as many pieces stand. */
	readonly perUnit: number
}
