import { eq, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { everyRow, type LedgerAsk } from '@/lib/season/ledger-ask'
import { rowsAPage } from '@/lib/season/rows-a-page'
import { type Cents, cents } from '@/lib/units/cents'
import { type Day, dayOf } from '@/lib/units/day'
import type { SeasonId } from '@/lib/units/id'
import { read } from '../open'
import { client, season, studio, visit } from '../schema'
import type { Stamp } from '../stamp'
import { denied } from '../viewer'
import { rowsOn, type SeasonRow } from './ledger-rows'
import { askedFor, idsOn, type Total, totalsOf } from './ledger-where'

export type { SeasonRow } from './ledger-rows'
export type { Total } from './ledger-where'

export type SeasonPage = {
	readonly season: typeof season.$inferSelect
	readonly today: Day
	readonly timeZone: string
	readonly currency: string
	readonly totals: readonly Total[]
	/** What is asked for, where that is not everything. */
	readonly asked: { readonly count: number; readonly valueCents: Cents } | undefined
	readonly rows: readonly SeasonRow[]
	readonly pages: number
	/** Visits of any season that nobody has planned yet. */
	readonly visitsToPlan: number
}

type Asked = { readonly season: SeasonId; readonly page: number; readonly ask?: LedgerAsk }

const toPlan = sql<number>`(SELECT count(*) FROM ${visit} JOIN ${client} ON ${client.id} = ${visit.clientId} WHERE ${visit.state} = 'to plan' AND ${client.archivedAt} IS NULL)`

/** One page of a season's ledger as it is asked for, and the season's totals over all of it. */
export async function seasonPage(
	viewer: Viewer,
	{ season: of, page, ask = everyRow }: Asked,
	stamp: Pick<Stamp, 'at'>,
): Promise<SeasonPage | undefined> {
	if (denied(viewer, 'see the season', null) !== null) return undefined
	return read((db) => {
		const [found] = db
			.select({ season, studio, visitsToPlan: toPlan })
			.from(season)
			.innerJoin(studio, eq(studio.id, 1))
			.where(eq(season.id, of))
			.all()
		if (found === undefined) return undefined
		const { timeZone, currency } = found.studio
		const today = dayOf(stamp.at, timeZone)
		const totals = totalsOf(db, of, today, stamp)
		const narrowed = askedFor(db, of, ask, today)
		const asked = narrowed && { ...narrowed, valueCents: cents(narrowed.valueCents) }
		const count = asked?.count ?? totals.reduce((sum, each) => sum + each.count, 0)
		const pages = Math.max(1, Math.ceil(count / rowsAPage))
		const rows = rowsOn(db, idsOn(db, of, ask, today, page), today)
		const { season: shown, visitsToPlan } = found
		return { season: shown, today, timeZone, currency, totals, asked, rows, pages, visitsToPlan }
	})
}
