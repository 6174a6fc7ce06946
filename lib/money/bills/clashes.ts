import { type Season, seasonName } from '../../season/season'
import type { Day } from '../../units/day'
import type { Id, ProposalId } from '../../units/id'

/** An approval that stands (not one that was reopened or cancelled), and whether a part of it is left to an agreement. */
export type SeasonApproved = {
	readonly proposal: ProposalId
	readonly season: Season
	readonly approvedOn: Day
	readonly isByAgreement: boolean
}

/** The seasons that a signed agreement bills by its instalments; up to the day of its end, that day included. */
export type SeasonsAgreed = {
	readonly agreement: Id<'agreement'>
	readonly seasons: readonly Season[]
	readonly endedOn: Day | null
}

export type Clash = {
	readonly is: 'billed by both' | 'billed by two agreements' | 'billed by neither'
	readonly season: Season
}

const covers = ({ seasons }: SeasonsAgreed, season: Season) =>
	seasons.some((each) => seasonName(each) === seasonName(season))

function ofApproval({ season, approvedOn, isByAgreement }: SeasonApproved, agreed: readonly SeasonsAgreed[]): Clash[] {
	const isCovered = agreed.some((each) => covers(each, season) && (each.endedOn === null || approvedOn <= each.endedOn))
	if (isCovered === isByAgreement) return []
	return [{ is: isCovered ? 'billed by both' : 'billed by neither', season }]
}

function ofAgreements(agreed: readonly SeasonsAgreed[]): Clash[] {
	const standing = agreed.filter(({ endedOn }) => endedOn === null)
	return standing.flatMap((each, index) =>
		each.seasons
			.filter((season) => standing.slice(0, index).some((other) => covers(other, season)))
			.map((season) => ({ is: 'billed by two agreements' as const, season })),
	)
}

/**
 * Seasons of a client that would be asked for twice or by nobody. An approval and a signature are refused while the
 * record with them in it has one: the agreement bills a season that it prices, or the proposal does.
 */
export const clashes = (approvals: readonly SeasonApproved[], agreed: readonly SeasonsAgreed[]): Clash[] => [
	...approvals.flatMap((each) => ofApproval(each, agreed)),
	...ofAgreements(agreed),
]
