import type { Vessel } from '../container/card'
import type { LengthUnit } from '../format/length'
import type { Rates } from '../pricing/rates'
import type { Hazard, Kind, Piece, Unit } from '../recipe/material'
import type { Season } from '../season/season'
import type { Cents } from '../units/cents'
import type { Day } from '../units/day'
import type { Hex } from '../units/hex'
import type { ContainerId, MaterialId, PlaceId, ProposalId } from '../units/id'
import type { wallKinds } from './offer/offer'

export type WallKind = (typeof wallKinds)[number]

export type Material = {
	readonly id: MaterialId
	readonly name: string
	readonly kind: Kind
	readonly piece: Piece
	readonly unit: Unit
	readonly piecesPerUnit: number
	readonly hex: Hex
	readonly hazards: readonly Hazard[]
	/** The pack that it is bought in; null while none is known. */
	readonly pack: { readonly size: number; readonly cents: Cents; readonly freightPercent: number } | null
	readonly usesBefore: number
	/** No other client's proposal of the season uses it. */
	readonly onlyHere: boolean
}

export type Card = Vessel & {
	readonly id: ContainerId
	readonly place: PlaceId
	readonly name: string
	readonly colour: Hex
	readonly limitedWeight: string
	readonly outletNear: boolean
	readonly walkLeftCm: number | null
}

export type Site = {
	readonly id: PlaceId
	readonly name: string
	readonly address: string
	readonly wall: { readonly kind: WallKind; readonly hex: Hex }
	readonly door: Hex | null
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
