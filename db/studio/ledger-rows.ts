import { and, eq, inArray, sql } from 'drizzle-orm'
import { type Group, groupOf } from '@/lib/season/group'
import type { LedgerAsk } from '@/lib/season/ledger-ask'
import { rowsAPage } from '@/lib/season/rows-a-page'
import { type Cents, cents } from '@/lib/units/cents'
import type { Day, Moment } from '@/lib/units/day'
import type { ClientId, ProposalId, SeasonId } from '@/lib/units/id'
import type { Reading } from '../open'
import { answerWords } from '../proposals/answers/words'
import { answer, client, container, place, proposal, sealedText } from '../schema'
import { ledgerOrder, ledgerWhere, type Shown, shownState } from './ledger-where'

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
	/** Whether the answer that stands was taken down on the phone. */
	readonly isByPhone: boolean
}

const firstPlace = (what: typeof place.name | typeof place.wallHex) =>
	sql<
		string | null
	>`(SELECT ${what} FROM ${place} WHERE ${place.clientId} = ${client.id} ORDER BY ${place.position}, ${place.id} LIMIT 1)`

const containersOf = sql<number>`(SELECT count(*) FROM ${container} JOIN ${place} ON ${place.id} = ${container.placeId} WHERE ${place.clientId} = ${client.id} AND ${container.retiredAt} IS NULL)`

type Shows = Pick<SeasonRow, 'name' | 'kind' | 'state' | 'containers' | 'wall'> & {
	readonly row: typeof proposal.$inferSelect
	readonly place: string | null
	readonly word: 'client' | 'studio' | null
	/** What was sealed with the wish, where one is open. */
	readonly words: string | null
}

/** A row of the database as the ledger shows it. */
function rowOf({ row, words, word, ...shown }: Shows): SeasonRow {
	const { id, clientId, palette, paletteCount, paletteHexes, revisionHash: revision } = row
	const { publishedAt, answeredAt, seenAt, remindedAt, undeliveredAt, answerBy } = row
	const note = words === null ? '' : (answerWords.safeParse(JSON.parse(words)).data?.notes[0]?.words ?? '')
	const value = {
		valueCents: row.valueCents === null ? null : cents(row.valueCents),
		marginTenths: row.marginTenths,
	}
	const dates = { publishedAt, answeredAt, seenAt, remindedAt, undeliveredAt, answerBy }
	const named = { ...shown, place: shown.place ?? '', group: groupOf(shown.state), note, isByPhone: word === 'studio' }
	return { id, client: clientId, revision, palette, paletteCount, paletteHexes, ...named, ...dates, ...value }
}

/** Which proposals stand on a page: what a row shows is asked of these alone, however many there are. */
function idsOn(db: Reading, of: SeasonId, ask: LedgerAsk, today: Day, page: number): ProposalId[] {
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

export function rowsOn(db: Reading, of: SeasonId, ask: LedgerAsk, today: Day, page: number): SeasonRow[] {
	const ids = idsOn(db, of, ask, today, page)
	const found = db
		.select({
			row: proposal,
			name: client.name,
			kind: client.kind,
			state: shownState(today),
			place: firstPlace(place.name),
			wall: firstPlace(place.wallHex),
			containers: containersOf,
			word: answer.word,
			words: sealedText.body,
		})
		.from(proposal)
		.innerJoin(client, eq(client.id, proposal.clientId))
		.leftJoin(answer, eq(answer.revisionHash, proposal.revisionHash))
		.leftJoin(sealedText, and(eq(sealedText.hash, answer.wordsHash), eq(proposal.state, 'change asked for')))
		.where(inArray(proposal.id, ids))
		.all()
	const byId = new Map(found.map((each) => [each.row.id, rowOf(each)]))
	return ids.flatMap((id) => byId.get(id) ?? [])
}
