import { and, asc, desc, eq, inArray, or, type SQL, sql } from 'drizzle-orm'
import { type KeptState, kept } from '@/lib/proposal/state'
import { type Group, groupOf, groups } from '@/lib/season/group'
import { isNarrowed, type LedgerAsk } from '@/lib/season/ledger-ask'
import { rowsAPage } from '@/lib/season/rows-a-page'
import { type Cents, cents } from '@/lib/units/cents'
import { type Day, moment } from '@/lib/units/day'
import type { ProposalId, SeasonId } from '@/lib/units/id'
import type { Reading } from '../open'
import { twoDaysMs } from '../proposals/remind'
import { client, proposal } from '../schema'
import type { Stamp } from '../stamp'

type Shown = KeptState | 'lapsed'

const shownState = (today: Day) =>
	sql<Shown>`CASE WHEN ${proposal.state} = 'waiting for an answer' AND ${proposal.answerBy} < ${today} THEN 'lapsed' ELSE ${proposal.state} END`

const all: readonly Shown[] = [...kept, 'lapsed']

/** Those who wait for them first, then those who wait for us; the order of the groups is the order of `groups`. */
const groupOrder = (today: Day) => {
	const cases = all.map((state) => sql`WHEN ${state} THEN ${groups.indexOf(groupOf(state))}`)
	return sql`CASE ${shownState(today)} ${sql.join(cases, sql` `)} END`
}

/** In the order of the nearest day to answer by; a wish before a draft; the newest answer. */
const byAnswer = (today: Day) => [
	sql`CASE WHEN ${shownState(today)} = 'waiting for an answer' THEN ${proposal.answerBy} END`,
	sql`CASE WHEN ${proposal.state} = 'change asked for' THEN 0 ELSE 1 END`,
	desc(proposal.answeredAt),
]

/** Since when it waits, for whom it waits at all. */
const since = sql`CASE ${proposal.state} WHEN 'waiting for an answer' THEN ${proposal.publishedAt} WHEN 'change asked for' THEN ${proposal.answeredAt} END`

function within(sort: LedgerAsk['sort'], today: Day): (SQL | typeof client.name)[] {
	switch (sort) {
		case 'answer by':
			return byAnswer(today)
		case 'days waited':
			return [sql`${since} IS NULL`, since]
		case 'name':
			return []
		case 'value':
			return [desc(proposal.valueCents)]
		case 'margin':
			return [sql`${proposal.marginTenths} IS NULL`, asc(proposal.marginTenths)]
		default:
			return sort satisfies never
	}
}

const ledgerOrder = ({ sort }: LedgerAsk, today: Day) => [
	groupOrder(today),
	...within(sort, today),
	sql`${client.name} COLLATE NOCASE`,
	asc(proposal.id),
]

const escaped = (text: string) => text.replace(/[\\%_]/g, (sign) => `\\${sign}`)

/** SQLite knows upper and lower case of ASCII alone, so a word is looked for as it may stand. */
function holds(column: typeof client.name | typeof proposal.palette, text: string): SQL | undefined {
	const [first = ''] = text
	const lower = text.toLowerCase()
	const forms = new Set([text, lower, text.toUpperCase(), `${first.toUpperCase()}${lower.slice(first.length)}`])
	return or(...[...forms].map((each) => sql`${column} LIKE ${`%${escaped(each)}%`} ESCAPE '\\'`))
}

function isShown(show: Exclude<LedgerAsk['show'], ''>, today: Day): SQL {
	const isGroup = (text: string): text is Group => groups.some((group) => group === text)
	const states = isGroup(show) ? all.filter((state) => groupOf(state) === show) : [show]
	return inArray(shownState(today), states)
}

/** The rows that are asked for. */
const ledgerWhere = (of: SeasonId, { show, kind, palette, name }: LedgerAsk, today: Day): SQL | undefined =>
	and(
		eq(proposal.seasonId, of),
		show === '' ? undefined : isShown(show, today),
		kind === '' ? undefined : eq(client.kind, kind),
		palette === '' ? undefined : holds(proposal.palette, palette),
		name === '' ? undefined : holds(client.name, name),
	)

/** Which proposals stand on a page: what a row shows is asked of these alone, however many there are. */
export function idsOn(db: Reading, of: SeasonId, ask: LedgerAsk, today: Day, page: number): ProposalId[] {
	return db
		.select({ id: proposal.id })
		.from(proposal)
		.innerJoin(client, eq(client.id, proposal.clientId))
		.where(ledgerWhere(of, ask, today))
		.orderBy(...ledgerOrder(ask, today))
		.limit(rowsAPage)
		.offset((page - 1) * rowsAPage)
		.all()
		.map(({ id }) => id)
}

/** How many rows are asked for and what they come to; undefined while all are. */
export function askedFor(
	db: Reading,
	of: SeasonId,
	ask: LedgerAsk,
	today: Day,
): { readonly count: number; readonly valueCents: number } | undefined {
	if (!isNarrowed(ask)) return undefined
	return db
		.select({ count: sql<number>`count(*)`, valueCents: sql<number>`coalesce(sum(${proposal.valueCents}), 0)` })
		.from(proposal)
		.innerJoin(client, eq(client.id, proposal.clientId))
		.where(ledgerWhere(of, ask, today))
		.all()[0]
}

export type Total = {
	readonly state: Shown
	readonly count: number
	readonly valueCents: Cents
	readonly firstAnswerBy: Day | null
	readonly isLeast: boolean
	/** Reminded within the last two days. */
	readonly lately: number
}

/** What the whole season comes to, state by state. */
export function totalsOf(db: Reading, of: SeasonId, today: Day, { at }: Pick<Stamp, 'at'>): Total[] {
	const state = shownState(today)
	const since = moment(new Date(Date.parse(at) - twoDaysMs))
	return db
		.select({
			state,
			count: sql<number>`count(*)`,
			value: sql<number>`coalesce(sum(${proposal.valueCents}), 0)`,
			firstAnswerBy: sql<Day | null>`min(${proposal.answerBy})`,
			palettes: sql<number>`max(${proposal.paletteCount})`,
			lately: sql<number>`coalesce(sum(${proposal.remindedAt} > ${since}), 0)`,
		})
		.from(proposal)
		.where(eq(proposal.seasonId, of))
		.groupBy(state)
		.all()
		.map(({ value, palettes, ...total }) => ({ ...total, valueCents: cents(value), isLeast: palettes > 1 }))
}
