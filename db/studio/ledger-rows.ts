import { and, eq, inArray, sql } from 'drizzle-orm'
import { type State, stateOf } from '@/lib/proposal/state'
import { type Group, groupOf } from '@/lib/season/group'
import type { Cents } from '@/lib/units/cents'
import type { Day, Moment } from '@/lib/units/day'
import type { ClientId, ProposalId, VisitId } from '@/lib/units/id'
import type { Reading } from '../open'
import { answerWords } from '../proposals/answers/words'
import { answer, client, container, place, proposal, sealedText, visit } from '../schema'

export type SeasonRow = {
	readonly id: ProposalId
	readonly client: ClientId
	readonly name: string
	readonly kind: 'business' | 'household'
	readonly state: State['is']
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
	/** Of one that was cancelled: what is still to be paid. */
	readonly remainsCents: Cents | null
	/** Of this client's visits to plan one that they asked for, since something is wrong; null where there is none. */
	readonly wrong: VisitId | null
}

const firstPlace = (what: typeof place.name | typeof place.wallHex) =>
	sql<
		string | null
	>`(SELECT ${what} FROM ${place} WHERE ${place.clientId} = ${client.id} ORDER BY ${place.position}, ${place.id} LIMIT 1)`

const containersOf = sql<number>`(SELECT count(*) FROM ${container} JOIN ${place} ON ${place.id} = ${container.placeId} WHERE ${place.clientId} = ${client.id} AND ${container.retiredAt} IS NULL)`

/** The visit to plan that a client asked for first. */
const wrongAt = sql<VisitId | null>`(SELECT ${visit.id} FROM ${visit} WHERE ${visit.clientId} = ${client.id} AND ${visit.state} = 'to plan' AND ${visit.reportedAt} IS NOT NULL ORDER BY ${visit.reportedAt} LIMIT 1)`

type Shows = Pick<SeasonRow, 'name' | 'kind' | 'containers' | 'wall' | 'wrong'> & {
	readonly row: typeof proposal.$inferSelect
	readonly place: string | null
	readonly word: 'client' | 'studio' | null
	/** What was sealed with the wish, where one is open. */
	readonly words: string | null
}

/** A row of the database as the ledger shows it. */
function rowOf({ row, words, word, ...shown }: Shows, today: Day): SeasonRow {
	const { id, clientId, palette, paletteCount, paletteHexes, revisionHash: revision } = row
	const { publishedAt, answeredAt, seenAt, remindedAt, undeliveredAt, answerBy } = row
	const note = words === null ? '' : (answerWords.safeParse(JSON.parse(words)).data?.notes[0]?.words ?? '')
	const value = {
		valueCents: row.valueCents,
		marginTenths: row.marginTenths,
		remainsCents: row.remainsCents,
	}
	const dates = { publishedAt, answeredAt, seenAt, remindedAt, undeliveredAt, answerBy }
	const state = stateOf(row.state, revision, answerBy, today).is
	const named = { ...shown, place: shown.place ?? '', state, group: groupOf(state), note, isByPhone: word === 'studio' }
	return { id, client: clientId, revision, palette, paletteCount, paletteHexes, ...named, ...dates, ...value }
}

export function rowsOn(db: Reading, ids: readonly ProposalId[], today: Day): SeasonRow[] {
	const found = db
		.select({
			row: proposal,
			name: client.name,
			kind: client.kind,
			place: firstPlace(place.name),
			wall: firstPlace(place.wallHex),
			containers: containersOf,
			wrong: wrongAt,
			word: answer.word,
			words: sealedText.body,
		})
		.from(proposal)
		.innerJoin(client, eq(client.id, proposal.clientId))
		.leftJoin(answer, eq(answer.revisionHash, proposal.revisionHash))
		.leftJoin(sealedText, and(eq(sealedText.hash, answer.wordsHash), eq(proposal.state, 'change asked for')))
		.where(inArray(proposal.id, [...ids]))
		.all()
	const byId = new Map(found.map((each) => [each.row.id, rowOf(each, today)]))
	return ids.flatMap((id) => byId.get(id) ?? [])
}
