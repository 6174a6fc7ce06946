import { eq, sql } from 'drizzle-orm'
import { z } from 'zod'
import type { Viewer } from '@/lib/access/viewer'
import type { LengthUnit } from '@/lib/format/length'
import type { Offer } from '@/lib/proposal/offer/offer'
import type { PlaceKeys } from '@/lib/proposal/picked/place-keys'
import type { State } from '@/lib/proposal/state'
import type { Hash } from '@/lib/record/hash'
import type { Cents } from '@/lib/units/cents'
import type { Day, Moment } from '@/lib/units/day'
import type { ClientId, PersonId, ProposalId } from '@/lib/units/id'
import { prepared, type Reading, read } from '../open'
import { unseal } from '../record/seal'
import { answer } from '../schema'
import type { Stamp } from '../stamp'
import { type AnswerWords, answerWords } from './answers/words'
import { offerIn, type Revision, revisionOf } from './documents'
import { type Found, findProposal } from './find'

const keys = z.array(z.string())
const placeKeys = z.record(z.string(), z.string())

export type GivenAnswer = {
	readonly kind: 'approval' | 'change asked for' | 'skip'
	readonly reference: string
	readonly at: Moment
	readonly by: PersonId
	readonly word: 'client' | 'studio'
	readonly option: string | null
	/** Places that took another option. */
	readonly places: PlaceKeys
	readonly extras: readonly string[]
	readonly leftOut: readonly string[]
	readonly totalCents: Cents | null
	/** Undefined once erased. */
	readonly words: AnswerWords | undefined
}

/** What stands of a proposal behind the client's door. */
export type OfferPage = {
	readonly client: ClientId
	readonly state: State
	readonly today: Day
	readonly timeZone: string
	/** How the studio measures. */
	readonly lengths: LengthUnit
	/** Undefined once the client's words are erased. */
	readonly offer: Offer | undefined
	readonly before: Offer | undefined
	readonly number: number
	readonly hash: Hash
	readonly publishedAt: Moment
	readonly answer: GivenAnswer | undefined
	/** Of one that was cancelled: what is still to be paid. */
	readonly remains: Cents | null
}

const answerOf = prepared((db) =>
	db
		.select()
		.from(answer)
		.where(eq(answer.revisionId, sql.placeholder('revision')))
		.prepare(),
)

export function answerTo(db: Reading, { id }: Pick<Revision, 'id'>): GivenAnswer | undefined {
	const [row] = answerOf(db).all({ revision: id })
	if (row === undefined) return undefined
	const { kind, reference, at, by, word, option } = row
	const words = row.wordsHash === null ? undefined : answerWords.safeParse(unseal(db, row.wordsHash)).data
	const places = placeKeys.parse(JSON.parse(row.places))
	const chosen = { places, extras: keys.parse(JSON.parse(row.extras)), leftOut: keys.parse(JSON.parse(row.leftOut)) }
	return {
		kind,
		reference,
		at,
		by,
		word,
		option,
		...chosen,
		totalCents: row.totalCents,
		words,
	}
}

/** What was answered to the revision that stands. */
export function standingAnswer(db: Reading, { row }: Pick<Found, 'row'>): GivenAnswer | undefined {
	const standing = revisionOf(db, row.id, row.revisionNumber)
	return standing && answerTo(db, standing)
}

/** The revision that stands; undefined when there is none, or none that the viewer may see. */
export async function readOffer(
	viewer: Viewer,
	id: ProposalId,
	stamp: Pick<Stamp, 'at'>,
): Promise<OfferPage | undefined> {
	return read((db) => {
		const found = findProposal(db, viewer, 'see the proposal', id, stamp)
		if (!found.ok || found.row.revisionHash === null) return undefined
		const { revisionNumber: number, clientId: client } = found.row
		const standing = revisionOf(db, id, number)
		if (standing === undefined) throw new Error(`readOffer: revision ${number} of ${id} is not there`)
		const previous = number > 1 ? revisionOf(db, id, number - 1) : undefined
		return {
			client,
			state: found.state,
			today: found.today,
			timeZone: found.studio.timeZone,
			lengths: found.studio.lengths,
			offer: offerIn(db, standing),
			before: previous && offerIn(db, previous),
			number,
			hash: standing.hash,
			publishedAt: standing.publishedAt,
			answer: answerTo(db, standing),
			remains: found.row.remainsCents,
		}
	})
}
