import type { Holding, Kind, Piece, Unit } from '@/lib/recipe/material'
import type { Quarter } from '@/lib/season/season'
import type { Cents } from '@/lib/units/cents'
import type { ContainerId, PlaceId } from '@/lib/units/id'
import type { Rates } from './rates'

/** One line of a recipe, with the pack that it is bought in. `count` in units of the material, three decimals at most. */
export type JobLine = {
	readonly name: string
	readonly unit: Unit
	readonly kind: Kind
	readonly piece: Piece
	/** Usable pieces in one unit: tips per kg or bunch; 1 for what is counted singly. */
	readonly piecesPerUnit: number
	readonly count: number
	readonly holding: Holding
	readonly pack: {
		readonly size: number
		readonly cents: Cents
		readonly freightPercent: number
	}
	/** Seasons that a lent thing has stood outside before this one. */
	readonly usesBefore: number
	/** Nobody else uses it this season, so whole packs are bought for it. */
	readonly onlyHere: boolean
}

export type JobContainer = {
	readonly id: ContainerId
	readonly place: PlaceId
	readonly name: string
	readonly openingCm2: number
	readonly soilL: number
	/** New this season: filled with soil, with nothing of a past season to clean out. */
	readonly isNew: boolean
	readonly lines: readonly JobLine[]
}

export type JobExtra = {
	readonly key: string
	readonly place: PlaceId
	readonly name: string
	/** Person-minutes beside those of its pieces. */
	readonly minutes: number
	readonly lines: readonly JobLine[]
}

/** One stop: its tax in thousandths of a per cent (6 % is 6000), its way there in minutes or at a flat price. */
export type JobVisit = {
	readonly place: PlaceId
	readonly name: string
	readonly taxMilliPercent: number
	readonly driveMinutes: number
	readonly zoneCents: Cents | null
	/** True when no next season is sold and the studio comes once more to take all down. */
	readonly takeDown: boolean
}

export type Agreement =
	| { readonly is: 'none' }
	| { readonly is: 'discount'; readonly percent: number }
	| {
			readonly is: 'fixed'
			readonly cents: Cents
			readonly containers: readonly ContainerId[]
	  }

export type Payer = {
	readonly kind: 'business' | 'household'
	readonly netDays: 15 | 30
	/** The number of a tax-exempt certificate that holds on the day of the install. */
	readonly exemptCertificate: string | null
}

/** All that the price of one option follows from; a visit for each place that a container or extra names. */
export type Job = {
	readonly currency: string
	readonly ratesVersion: number
	readonly rates: Rates
	readonly quarter: Quarter
	readonly payer: Payer
	readonly agreement: Agreement
	/** What this option costs beyond a season that is priced fixed. */
	readonly supplementCents: Cents
	readonly design: 'new' | 'repeat'
	readonly visits: readonly JobVisit[]
	readonly containers: readonly JobContainer[]
	readonly extras: readonly JobExtra[]
}
