import { and, eq, inArray } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { type SeasonJob, type SeasonResult, seasonResult } from '@/lib/money/result/season-result'
import { wordsIn } from '@/lib/pricing/cost/words'
import { take } from '@/lib/proposal/answer'
import type { Season } from '@/lib/season/season'
import { costingOf } from '@/lib/season/standing'
import type { ClientId, SeasonId } from '@/lib/units/id'
import { type Reading, read } from '../open'
import { inputsIn, offerIn, type Revision } from '../proposals/documents'
import { answerTo } from '../proposals/read-offer'
import { client, proposal, revision, season, studio } from '../schema'
import { ratesOf } from '../studio/rates'
import { denied } from '../viewer'

export type ResultPage = {
	readonly season: Season
	readonly currency: string
	readonly result: SeasonResult
	readonly names: ReadonlyMap<ClientId, string>
}

/** What was approved, at what it was thought to cost; what it cost in fact, and its minutes, nobody has written down yet. */
function jobOf(db: Reading, of: ClientId, to: Revision): SeasonJob[] {
	const [offer, given, inputs] = [offerIn(db, to), answerTo(db, to), inputsIn(db, to)]
	if (offer === undefined || inputs === undefined || given?.option == null) return []
	const leftOut = offer.containers.filter(({ id }) => given.leftOut.includes(id)).map(({ id }) => id)
	const taken = take(offer, { ...given, option: given.option, leftOut })
	if (!taken.ok) return []
	const { costCents, minutes, netCents } = costingOf(
		taken,
		inputs,
		ratesOf(db, to.ratesVersion),
		wordsIn(taken.quote.currency),
		taken.choice,
	)
	const actual = { costCents: null, minutes: null }
	return [{ client: of, valueCents: netCents, estimated: { costCents, minutes }, actual }]
}

/** What a season brought: of each approval that stands its price before tax, and what it was estimated to cost. */
export async function readSeasonResult(viewer: Viewer, of: SeasonId): Promise<ResultPage | undefined> {
	if (denied(viewer, 'see the costing', null) !== null) return undefined
	return read((db) => {
		const [found] = db
			.select({ season, currency: studio.currency })
			.from(season)
			.innerJoin(studio, eq(studio.id, 1))
			.where(eq(season.id, of))
			.all()
		if (found === undefined) return undefined
		const rows = db
			.select({ client: client.id, name: client.name, to: revision })
			.from(proposal)
			.innerJoin(client, eq(client.id, proposal.clientId))
			.innerJoin(revision, eq(revision.hash, proposal.revisionHash))
			.where(and(eq(proposal.seasonId, of), inArray(proposal.state, ['approved', 'installed'])))
			.all()
		return {
			season: { quarter: found.season.quarter, year: found.season.year },
			currency: found.currency,
			result: seasonResult(rows.flatMap(({ client: id, to }) => jobOf(db, id, to))),
			names: new Map(rows.map(({ client: id, name }) => [id, name])),
		}
	})
}
