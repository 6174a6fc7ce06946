import { and, asc, desc, eq, gt, isNull, or, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { mostClients } from '@/lib/forms/catalogue/start-forms'
import { fitsOf } from '@/lib/proposal/start/fit'
import type { DraftFit, ToApply, Undrafted } from '@/lib/season/collection/pages'
import { problems } from '@/lib/season/collection/problems'
import type { PersonId, SeasonId } from '@/lib/units/id'
import { libraryIn } from '../../catalogue/read-recipes'
import { type Reading, read } from '../../open'
import { aroundIn, doorsIn } from '../../proposals/desk/around'
import { draftOf } from '../../proposals/documents'
import { factsFor, sharedIn, siteColoursOf } from '../../proposals/facts'
import { findProposal } from '../../proposals/find'
import { client, container, draft, place, proposal, season } from '../../schema'
import type { Stamp } from '../../stamp'
import { denied } from '../../viewer'
import { collectionOf } from './kept'

const firstPlace = (what: typeof place.name | typeof place.wallHex) =>
	sql<
		string | null
	>`(SELECT ${what} FROM ${place} WHERE ${place.clientId} = ${client.id} ORDER BY ${place.position}, ${place.id} LIMIT 1)`

const containers = sql<number>`(SELECT count(*) FROM ${container} JOIN ${place} ON ${place.id} = ${container.placeId} WHERE ${place.clientId} = ${client.id} AND ${container.retiredAt} IS NULL)`

/** Clients with no proposal for the season, or with a draft that holds no palette. */
function unfilled(db: Reading, of: SeasonId): Undrafted[] {
	const none = isNull(proposal.id)
	const empty = and(eq(proposal.state, 'drafting'), eq(proposal.revisionNumber, 0), eq(proposal.paletteCount, 0))
	return db
		.select({
			id: client.id,
			name: client.name,
			kind: client.kind,
			place: firstPlace(place.name),
			wall: firstPlace(place.wallHex),
			containers,
		})
		.from(client)
		.leftJoin(proposal, and(eq(proposal.clientId, client.id), eq(proposal.seasonId, of)))
		.where(and(isNull(client.archivedAt), or(none, empty)))
		.orderBy(asc(client.name), asc(client.id))
		.all()
}

/** Drafts of the season that hold palettes and were never published, the newest first. */
const drafted = (db: Reading, of: SeasonId) =>
	db
		.select({
			proposal: proposal.id,
			client: client.id,
			name: client.name,
			wall: firstPlace(place.wallHex),
			hexes: proposal.paletteHexes,
		})
		.from(proposal)
		.innerJoin(client, eq(client.id, proposal.clientId))
		.innerJoin(draft, eq(draft.proposalId, proposal.id))
		.where(
			and(
				eq(proposal.seasonId, of),
				eq(proposal.state, 'drafting'),
				eq(proposal.revisionNumber, 0),
				gt(proposal.paletteCount, 0),
				isNull(client.archivedAt),
			),
		)
		.orderBy(desc(draft.updatedAt), asc(client.name))
		.limit(mostClients)
		.all()

/** How each draft stands now, whatever was changed in it since it was made. */
function fitsIn(
	db: Reading,
	viewer: Viewer,
	{ season: of, by }: { season: SeasonId; by: PersonId },
	stamp: Pick<Stamp, 'at'>,
): DraftFit[] {
	const [shared, doors] = [sharedIn(db, of, by), doorsIn(db, of)]
	return drafted(db, of).flatMap((row) => {
		const found = findProposal(db, viewer, 'see the draft', row.proposal, stamp)
		if (!found.ok) return []
		const facts = factsFor(db, found, by, shared)
		const beside = { site: siteColoursOf(db, facts), around: aroundIn(db, found, facts, doors) }
		const ground = { draft: draftOf(db, row.proposal).draft, facts, ...beside }
		const first = ground.draft.containers[0]?.id
		const shown = facts.cards.find(({ id }) => id === first)?.place ?? null
		return { ...row, place: shown, fits: fitsOf(ground) }
	})
}

/** Whom a season's house designs can be applied to, and how the drafts of the season stand. */
export async function toApply(viewer: Viewer, of: SeasonId, stamp: Pick<Stamp, 'at'>): Promise<ToApply | undefined> {
	if (denied(viewer, 'change the draft', null) !== null || viewer.is !== 'staff') return undefined
	return read((db) => {
		const [found] = db.select().from(season).where(eq(season.id, of)).all()
		if (found === undefined) return undefined
		const { collection } = collectionOf(db, of)
		return {
			season: found,
			problems: problems(collection, libraryIn(db)),
			clients: unfilled(db, of),
			drafts: fitsIn(db, viewer, { season: of, by: viewer.person }, stamp),
		}
	})
}
