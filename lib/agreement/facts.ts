import type { CurrencyCode } from '../format/money'
import type { ClientId, ContainerId, PlaceId } from '../units/id'

/** What is known beside the terms when an agreement is issued, as the record stands. */
export type AgreementFacts = {
	readonly currency: CurrencyCode
	readonly studio: { readonly name: string; readonly signedBy: string }
	readonly client: { readonly id: ClientId; readonly name: string }
	readonly places: readonly { readonly id: PlaceId; readonly name: string; readonly address: string }[]
	/** `words` is the vessel: "round planter, 18 in across and 20 in high". */
	readonly containers: readonly {
		readonly id: ContainerId
		readonly place: PlaceId
		readonly name: string
		readonly words: string
	}[]
}
