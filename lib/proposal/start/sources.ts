import type { Season } from '../../season/season'
import type { ClientId, ProposalId, SeasonId } from '../../units/id'

/** A proposal that a draft can be started from. */
export type Source = {
	readonly proposal: ProposalId
	readonly name: string
	readonly season: Season
	readonly palette: string
}

/** What a draft can be started from. */
export type Sources = {
	readonly client: { readonly id: ClientId; readonly name: string }
	readonly season: Season & { readonly id: SeasonId }
	/** This client's own of other seasons, the newest first. */
	readonly earlier: readonly Source[]
	/** Other clients', of this season first. */
	readonly others: readonly Source[]
	readonly designs: readonly string[]
	readonly recipes: readonly { readonly id: string; readonly name: string }[]
	/** The draft that is there already, and whether it holds a palette. */
	readonly there: { readonly proposal: ProposalId; readonly isFilled: boolean } | null
}
