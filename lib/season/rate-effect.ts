import type { ProposalId } from '../units/id'
import type { Season } from './season'
import type { Weighed } from './weigh'

/** What an open draft comes to by the rates that stand and by others; null where nothing in it is priced. */
export type RateEffect = {
	readonly proposal: ProposalId
	readonly client: string
	readonly season: Season
	readonly was: Weighed | null
	readonly becomes: Weighed | null
}
