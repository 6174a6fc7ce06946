import type { Cents } from '../units/cents'
import type { ProposalId } from '../units/id'
import type { Season } from './season'

/** Before tax; the margin in tenths of a per cent. */
export type Weighed = { readonly valueCents: Cents; readonly marginTenths: number | null }

/** What an open draft comes to by the rates that stand and by others; null where nothing in it is priced. */
export type RateEffect = {
	readonly proposal: ProposalId
	readonly client: string
	readonly season: Season
	readonly was: Weighed | null
	readonly becomes: Weighed | null
}
