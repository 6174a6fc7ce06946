import type { Stand, Vessel, WallMaterial } from '../container/card'
import type { WallKind } from '../container/site'
import type { Look } from '../recipe/look'
import type { Role } from '../recipe/material'
import type { Quarter } from '../season/season'
import type { Hex } from '../units/hex'

/** One line of a recipe as it is seen: `count` pieces of it stand in the pot. */
export type SceneLine = Look & { readonly name: string; readonly role: Role; readonly count: number }

export type ScenePot = {
	readonly name: string
	readonly vessel: Vessel
	readonly madeOf: WallMaterial
	readonly colour: Hex
	readonly stands: Stand
	/** Sill to glass, where it hangs under a window. */
	readonly sillToGlassCm: number | null
	readonly lines: readonly SceneLine[]
}

/** The containers of one place before its wall; every measure in cm. */
export type Scene = {
	readonly quarter: Quarter
	readonly hour: 'day' | 'evening'
	readonly wall: { readonly kind: WallKind; readonly hex: Hex }
	/** Colour of the door that is drawn for scale; null draws none. */
	readonly door: Hex | null
	/** A rule with figures beside the pots. */
	readonly measure: 'none' | 'cm' | 'in'
	readonly pots: readonly ScenePot[]
}
