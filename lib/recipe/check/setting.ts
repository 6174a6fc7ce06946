import type { Stance, Vessel, WallMaterial } from '../../container/card'
import type { LengthUnit } from '../../format/length'
import type { Quarter } from '../../season/season'
import type { Planned } from '../planned'
import type { Month } from '../traits'
import type { Finding } from './finding'

export type SetPot = Vessel & Stance & { readonly wall: WallMaterial; readonly outletNear: boolean }

/** A breaker, and what already hangs on it. */
export type Circuit = { readonly volts: number; readonly amps: number; readonly otherWatts: number }

/** The usual outlet of a house in the United States, with nothing else on it. */
export const usualCircuit: Circuit = { volts: 120, amps: 15, otherWatts: 0 }

/** Where and when a recipe will stand. */
export type Setting = {
	readonly pot: SetPot
	readonly quarter: Quarter
	/** Of the install. */
	readonly month: Month
	/** USDA plant hardiness zone of the place (5b is 5.5); null while nobody has said. */
	readonly zone: number | null
	readonly circuit: Circuit
	/** Days that lights are going to hang; null while nobody has said. */
	readonly daysHung: number | null
	/** How the studio measures: sentences speak so. */
	readonly lengths: LengthUnit
}

/** One check: what it finds in the lines of one pot, nothing where all is well. */
export type Check = (lines: readonly Planned[], setting: Setting) => Finding[]
