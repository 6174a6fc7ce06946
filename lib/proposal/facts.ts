import type { Stance, Vessel, WallMaterial } from '../container/card'
import type { WallKind } from '../container/site'
import type { LengthUnit } from '../format/length'
import type { Rates } from '../pricing/rates'
import type { DesignMaterial } from '../recipe/traits'
import type { Season } from '../season/season'
import type { Cents } from '../units/cents'
import type { Day } from '../units/day'
import type { Hex } from '../units/hex'
import type { ContainerId, MaterialId, PlaceId, ProposalId } from '../units/id'

export type Material = DesignMaterial & {
	readonly isRetired: boolean
	/** The pack that it is bought in; null while none is known. */
	readonly pack: { readonly size: number; readonly cents: Cents; readonly freightPercent: number } | null
	readonly usesBefore: number
	/** No other client's proposal of the season uses it. */
	readonly onlyHere: boolean
}

export type Card = Vessel &
	Stance & {
		readonly id: ContainerId
		readonly place: PlaceId
		readonly name: string
		readonly colour: Hex
		readonly wall: WallMaterial
		readonly outletNear: boolean
		readonly walkLeftCm: number | null
	}

export type Site = {
	readonly id: PlaceId
	readonly name: string
	readonly address: string
	readonly wall: { readonly kind: WallKind; readonly hex: Hex }
	readonly door: Hex | null
	/** USDA hardiness zone, 5b being 5.5; null where nobody has looked it up. */
	readonly zone: number | null
	readonly taxMilliPercent: number
	readonly driveMinutes: number
	readonly zoneCents: Cents | null
}

export type Customer = {
	readonly name: string
	readonly kind: 'business' | 'household'
	readonly netDays: 15 | 30
	readonly exempt: { readonly certificate: string; readonly expires: Day } | null
}

/** Everything beside the draft that a price and an offer follow from, as it stands in the record. */
export type Facts = {
	readonly proposal: ProposalId
	readonly studio: { readonly name: string; readonly currency: string; readonly lengths: LengthUnit }
	readonly designer: string
	readonly season: Season
	readonly customer: Customer
	readonly sites: readonly Site[]
	readonly cards: readonly Card[]
	/** Somebody at the client may approve. */
	readonly hasApprover: boolean
	readonly materials: ReadonlyMap<MaterialId, Material>
	readonly ratesVersion: number
	readonly rates: Rates
}
