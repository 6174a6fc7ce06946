import { and, asc, desc, eq, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { type KeptState, kept } from '@/lib/proposal/state'
import { type Group, groupOf } from '@/lib/season/group'
import { rowsAPage } from '@/lib/season/rows-a-page'
import { type Cents, cents } from '@/lib/units/cents'
import { type Day, dayOf, type Moment } from '@/lib/units/day'
import type { ClientId, ProposalId, SeasonId, VisitId } from '@/lib/units/id'
import { type Reading, read } from '../open'
import { answerWords } from '../proposals/answers/words'
import { answer, client, container, place, proposal, sealedText, season, studio, visit } from '../schema'
import type { Stamp } from '../stamp'
import { denied } from '../viewer'

type Shown = KeptState | 'lapsed'

export type SeasonRow = {
	readonly id: ProposalId
	readonly client: ClientId
	readonly name: string
	readonly kind: 'business' | 'household'
	readonly state: Shown
	readonly group: Group
	readonly place: string
	readonly containers: number
	readonly wall: string | null
	/** Hash of the revision that stands; null while nothing was published. */
	readonly revision: string | null
	readonly palette: string
	readonly paletteCount: number
	readonly paletteHexes: string
	readonly publishedAt: Moment | null
	readonly answeredAt: Moment | null
	readonly seenAt: Moment | null
	readonly remindedAt: Moment | null
	readonly undeliveredAt: Moment | null
	readonly answerBy: Day | null
	readonly valueCents: Cents | null
	readonly marginTenths: number | null
	/** The first note of a change that was asked for. */
	readonly note: string
	/** Of this client's visits to plan one that they asked for, since something is wrong; null where there is none. */
	readonly wrong: VisitId | null
}

export type Total = {
	readonly state: Shown
	readonly count: number
	readonly valueCents: Cents
	readonly firstAnswerBy: Day | null
	readonly isLeast: boolean
}

export type SeasonPage = {
	readonly season: typeof season.$inferSelect
	readonly today: Day
	readonly timeZone: string
	readonly currency: string
	readonly totals: readonly Total[]
	readonly rows: readonly SeasonRow[]
	readonly pages: number
	/** Visits of any season that nobody has planned yet. */
	readonly visitsToPlan: number
}

const shownState = (today: Day) =>
	sql<Shown>`CASE WHEN ${proposal.state} = 'waiting for an answer' AND ${proposal.answerBy} < ${today} THEN 'lapsed' ELSE ${proposal.state} END`

/** Those who wait for them first, then those who wait for us; the order of the groups is the order of `groupOf`. */
const groupOrder = (today: Day) => {
	const number: Record<Group, number> = { 'waiting for them': 0, 'waiting for us': 1, settled: 2 }
	const cases = [...kept, 'lapsed' as const].map((state) => sql`WHEN ${state} THEN ${number[groupOf(state)]}`)
	return sql`CASE ${shownState(today)} ${sql.join(cases, sql` `)} END`
}

/** Within a group: the nearest day to answer by; a wish before a draft; the newest answer. */
const within = (today: Day) => [
	sql`CASE WHEN ${shownState(today)} = 'waiting for an answer' THEN ${proposal.answerBy} END`,
	sql`CASE WHEN ${proposal.state} = 'change asked for' THEN 0 ELSE 1 END`,
	desc(proposal.answeredAt),
]

function totalsOf(db: Reading, of: SeasonId, today: Day): Total[] {
	const state = shownState(today)
	return db
		.select({
			state,
			count: sql<number>`count(*)`,
			value: sql<number>`coalesce(sum(${proposal.valueCents}), 0)`,
			firstAnswerBy: sql<Day | null>`min(${proposal.answerBy})`,
			palettes: sql<number>`max(${proposal.paletteCount})`,
		})
		.from(proposal)
		.where(eq(proposal.seasonId, of))
		.groupBy(state)
		.all()
		.map(({ value, palettes, ...total }) => ({ ...total, valueCents: cents(value), isLeast: palettes > 1 }))
}

const firstPlace = (what: typeof place.name | typeof place.wallHex) =>
	sql<
		string | null
	>`(SELECT ${what} FROM ${place} WHERE ${place.clientId} = ${client.id} ORDER BY ${place.position}, ${place.id} LIMIT 1)`

const containersOf = sql<number>`(SELECT count(*) FROM ${container} JOIN ${place} ON ${place.id} = ${container.placeId} WHERE ${place.clientId} = ${client.id} AND ${container.retiredAt} IS NULL)`

/** The visit to plan that a client asked for first. */
const wrongAt = sql<VisitId | null>`(SELECT ${visit.id} FROM ${visit} WHERE ${visit.clientId} = ${client.id} AND ${visit.state} = 'to plan' AND ${visit.reportedAt} IS NOT NULL ORDER BY ${visit.reportedAt} LIMIT 1)`

const toPlan = sql<number>`(SELECT count(*) FROM ${visit} JOIN ${client} ON ${client.id} = ${visit.clientId} WHERE ${visit.state} = 'to plan' AND ${client.archivedAt} IS NULL)`

type Shows = Pick<SeasonRow, 'name' | 'kind' | 'state' | 'containers' | 'wall' | 'wrong'> & {
	readonly row: typeof proposal.$inferSelect
	readonly place: string | null
	/** What was sealed with the wish, where one is open. */
	readonly words: string | null
}

/** A row of the database as the ledger shows it. */
function rowOf({ row, words, ...shown }: Shows): SeasonRow {
	const { id, clientId, palette, paletteCount, paletteHexes, revisionHash: revision } = row
	const { publishedAt, answeredAt, seenAt, remindedAt, undeliveredAt, answerBy } = row
	const note = words === null ? '' : (answerWords.safeParse(JSON.parse(words)).data?.notes[0]?.words ?? '')
	const value = {
		valueCents: row.valueCents === null ? null : cents(row.valueCents),
		marginTenths: row.marginTenths,
	}
	const dates = { publishedAt, answeredAt, seenAt, remindedAt, undeliveredAt, answerBy }
	const named = { ...shown, place: shown.place ?? '', group: groupOf(shown.state), note }
	return { id, client: clientId, revision, palette, paletteCount, paletteHexes, ...named, ...dates, ...value }
}

function rowsOf(db: Reading, of: SeasonId, today: Day, page: number): SeasonRow[] {
	return db
		.select({
			row: proposal,
			name: client.name,
			kind: client.kind,
			state: shownState(today),
			place: firstPlace(place.name),
			wall: firstPlace(place.wallHex),
			containers: containersOf,
			wrong: wrongAt,
			words: sealedText.body,
		})
		.from(proposal)
		.innerJoin(client, eq(client.id, proposal.clientId))
		.leftJoin(answer, and(eq(answer.revisionHash, proposal.revisionHash), eq(proposal.state, 'change asked for')))
		.leftJoin(sealedText, eq(sealedText.hash, answer.wordsHash))
		.where(eq(proposal.seasonId, of))
		.orderBy(groupOrder(today), ...within(today), asc(client.name), asc(proposal.id))
		.limit(rowsAPage)
		.offset((page - 1) * rowsAPage)
		.all()
		.map(rowOf)
}

/** One page of a season's ledger, and its totals over all pages. */
export async function seasonPage(
	viewer: Viewer,
	{ season: of, page }: { season: SeasonId; page: number },
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
		const totals = totalsOf(db, of, today)
		const pages = Math.max(1, Math.ceil(totals.reduce((sum, { count }) => sum + count, 0) / rowsAPage))
		const { season: shown, visitsToPlan } = found
		return { season: shown, today, timeZone, currency, totals, rows: rowsOf(db, of, today, page), pages, visitsToPlan }
	})
}
