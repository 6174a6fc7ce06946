import { and, asc, eq, inArray, isNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { wordsIn } from '@/lib/pricing/cost/words'
import type { Recipient } from '@/lib/proposal/desk/publish-words'
import { makeRevision } from '@/lib/proposal/make'
import type { Problem } from '@/lib/proposal/problem'
import { leastTotal, standing } from '@/lib/season/standing'
import type { Cents } from '@/lib/units/cents'
import type { Day } from '@/lib/units/day'
import type { PersonId, ProposalId, SeasonId } from '@/lib/units/id'
import { type Reading, read } from '../open'
import { draftOf, offerIn, revisionOf } from '../proposals/documents'
import { factsFor, type Shared, sharedIn } from '../proposals/facts'
import { type Found, findProposal } from '../proposals/find'
import { recipientsOf } from '../proposals/recipients'
import { client, draft, proposal, season, studio } from '../schema'
import type { Stamp } from '../stamp'
import { denied } from '../viewer'

/** What publishing a draft would send out, before it is done. */
export type Outlook = {
	readonly ok: true
	/** With tax; of several palettes the least. */
	readonly totalCents: Cents
	/** Of the revision that stands; null while there is none. */
	readonly beforeCents: Cents | null
	readonly isLeast: boolean
	readonly marginTenths: number | null
	readonly isUnderFloor: boolean
	readonly recipients: readonly Recipient[]
	readonly answerBy: Day
}

export type SeasonDraft = {
	readonly id: ProposalId
	readonly name: string
	readonly version: number
	readonly outlook: Outlook | { readonly ok: false; readonly problems: readonly Problem[] }
}

export type SeasonDrafts = {
	readonly season: typeof season.$inferSelect
	readonly currency: string
	readonly drafts: readonly SeasonDraft[]
}

const unchanged: Problem = { at: '', says: 'The change that was asked for is not in the draft yet.' }

function before(db: Reading, { row }: Found): Cents | null {
	const standing = revisionOf(db, row.id, row.revisionNumber)
	const offer = standing && offerIn(db, standing)
	return offer === undefined ? null : leastTotal(offer)
}

type At = { readonly designer: PersonId; readonly shared: Shared }

function outlookOf(db: Reading, found: Found, { designer, shared }: At): Pick<SeasonDraft, 'version' | 'outlook'> {
	const { row } = found
	const kept = draftOf(db, row.id)
	const facts = factsFor(db, found, designer, shared)
	const words = wordsIn(facts.studio.currency)
	const made = makeRevision(kept.draft, facts, words.money, row.revisionNumber + 1, found.today)
	if (!made.ok) return { version: kept.version, outlook: made }
	const { marginTenths, paletteCount } = standing(made.offer, made.inputs, facts.rates, words)
	const money = { totalCents: leastTotal(made.offer), beforeCents: before(db, found), marginTenths }
	const isUnderFloor = marginTenths !== null && marginTenths < facts.rates.marginFloorPercent * 10
	const told = { recipients: recipientsOf(db, found.client.id), answerBy: made.offer.answerBy }
	return {
		version: kept.version,
		outlook: { ok: true, ...money, isLeast: paletteCount > 1, isUnderFloor, ...told },
	}
}

/** Proposals of a season that wait for the studio, with when their draft was saved. */
const waiting = (db: Reading, of: SeasonId) =>
	db
		.select({ id: proposal.id, name: client.name, answeredAt: proposal.answeredAt, savedAt: draft.updatedAt })
		.from(proposal)
		.innerJoin(client, eq(client.id, proposal.clientId))
		.innerJoin(draft, eq(draft.proposalId, proposal.id))
		.where(
			and(
				eq(proposal.seasonId, of),
				inArray(proposal.state, ['drafting', 'change asked for']),
				isNull(client.archivedAt),
			),
		)
		.orderBy(asc(client.name), asc(proposal.id))
		.all()

/** Every draft of a season: what publishing it would send out, or what is missing; undefined without the season. */
export async function seasonDrafts(
	viewer: Viewer,
	of: SeasonId,
	stamp: Pick<Stamp, 'at'>,
): Promise<SeasonDrafts | undefined> {
	if (denied(viewer, 'publish', null) !== null || viewer.is !== 'staff') return undefined
	const designer = viewer.person
	return read((db) => {
		const [planned] = db
			.select({ season, currency: studio.currency })
			.from(season)
			.innerJoin(studio, eq(studio.id, 1))
			.where(eq(season.id, of))
			.all()
		if (planned === undefined) return undefined
		const shared = sharedIn(db, of, designer)
		const drafts = waiting(db, of).flatMap(({ id, name, answeredAt, savedAt }): SeasonDraft[] => {
			const found = findProposal(db, viewer, 'publish', id, stamp)
			if (!found.ok) return []
			const isAsked = found.state.is === 'change asked for' && answeredAt !== null && savedAt <= answeredAt
			const { version, outlook } = outlookOf(db, found, { designer, shared })
			return [{ id, name, version, outlook: isAsked ? { ok: false, problems: [unchanged] } : outlook }]
		})
		return { ...planned, drafts }
	})
}

/** What the proposals of a season are called; undefined without the season. */
export async function seasonNames(viewer: Viewer, of: SeasonId): Promise<ReadonlyMap<ProposalId, string> | undefined> {
	if (denied(viewer, 'publish', null) !== null) return undefined
	return read((db) => {
		if (db.select({ id: season.id }).from(season).where(eq(season.id, of)).all().length === 0) return undefined
		const rows = db
			.select({ id: proposal.id, name: client.name })
			.from(proposal)
			.innerJoin(client, eq(client.id, proposal.clientId))
			.where(eq(proposal.seasonId, of))
			.all()
		return new Map(rows.map(({ id, name }) => [id, name]))
	})
}
