import type { Cents } from '@/lib/units/cents'
import type { ContainerId, PlaceId } from '@/lib/units/id'
import type { Payer } from './job'
import type { Rates } from './rates'

/** An amount by class of tax; the three sum to the part's price. */
export type Split = {
	readonly plants: Cents
	readonly goods: Cents
	readonly labour: Cents
}

/** What a part stands for, and so when a client's choice keeps it. */
export type PartOf =
	| {
			readonly is: 'container' | 'disposal' | 'soil' | 'take-down'
			readonly container: ContainerId
	  }
	| { readonly is: 'travel' | 'design' | 'season' | 'supplement' }
	| { readonly is: 'extra'; readonly extra: string }

/** One priced part of an option, tax not in it. `bill` says who asks for the money: the agreement, or this proposal apart. */
export type Part = PartOf & {
	readonly name: string
	readonly place: PlaceId
	readonly cents: Cents
	readonly split: Split
	readonly bill: 'agreement' | 'apart'
}

/**
 * Everything that a client's total follows from, frozen at publishing: the client's side of the computation,
 * without a cost in it. `quote` turns it and a choice into a total.
 */
export type PriceList = {
	readonly is: 'price list'
	readonly currency: string
	readonly ratesVersion: number
	readonly parts: readonly Part[]
	readonly discountPercent: number
	readonly minimumVisitCents: Cents | null
	readonly tax: Rates['tax'] & {
		readonly places: readonly {
			readonly place: PlaceId
			readonly milliPercent: number
		}[]
	}
	readonly payer: Payer
	readonly depositPercent: number
	readonly isUnderAgreement: boolean
}
