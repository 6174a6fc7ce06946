import type { Light } from '../container/card'
import type { MaterialId } from '../units/id'
import type { Look } from './look'
import type { Hazard, Kind, Piece, Role, Unit } from './material'

/** Light in which a plant thrives. */
export const lightNeeds = ['any', 'sun', 'sun or part', 'part', 'part or shade', 'shade'] as const
export type LightNeed = (typeof lightNeeds)[number]

const lightsByNeed: Readonly<Record<LightNeed, readonly Light[]>> = {
	any: [],
	sun: ['sun'],
	'sun or part': ['sun', 'part'],
	part: ['part'],
	'part or shade': ['part', 'shade'],
	shade: ['shade'],
}

export const lightsOf = (need: LightNeed): readonly Light[] => lightsByNeed[need]

/** January is 1. */
export type Month = number

/** The months from one to another, over the turn of the year where the first is the later. */
export function monthsFrom(from: Month, to: Month): Month[] {
	const length = ((to - from + 12) % 12) + 1
	return Array.from({ length }, (_, index) => ((from - 1 + index) % 12) + 1)
}

/** What a material needs and does outside. */
export type Traits = {
	/** Months in which it can be had. */
	readonly had: readonly Month[]
	/** Months through which it stands outside and looks well. */
	readonly lasts: readonly Month[]
	/** USDA plant hardiness zone down to which it overwinters (5b is 5.5); null for what is not alive. */
	readonly zone: number | null
	/** Light in which it thrives; none named: any. */
	readonly wants: readonly Light[]
	/** On-centre spacing of a live plant. */
	readonly spacingCm: number | null
	readonly rootBallLitres: number | null
	/** Of one piece. */
	readonly kgEach: number | null
	/** Of one string of lights; and how many the maker lets run end to end. */
	readonly watts: number | null
	readonly mostEndToEnd: number | null
	/** Why its trade is regulated somewhere (quarantine, invasive); empty where it is not known to be. */
	readonly regulated: string
}

/** A material as a design sees it: no price, no supplier. */
export type DesignMaterial = Look &
	Traits & {
		readonly id: MaterialId
		readonly name: string
		readonly kind: Kind
		readonly piece: Piece
		readonly role: Role
		readonly unit: Unit
		/** Usable tips per kg, leads per string: pieces that one unit gives. */
		readonly piecesPerUnit: number
		readonly hazards: readonly Hazard[]
		/** Units that storage holds, the studio's own. */
		readonly inStock: number
	}

/** To be had in the month, or in storage; a card that names no month is not asked. */
export const isAtHand = ({ had, inStock }: Pick<DesignMaterial, 'had' | 'inStock'>, month: Month): boolean =>
	inStock > 0 || had.length === 0 || had.includes(month)
