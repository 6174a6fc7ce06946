import { and, desc, eq, gt, isNull, ne, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Sources } from '@/lib/proposal/start/sources'
import type { ClientId, SeasonId } from '@/lib/units/id'
import { libraryIn } from '../../catalogue/read-recipes'
import { type Reading, read } from '../../open'
import { client, draft, proposal, season } from '../../schema'
import { collectionOf } from '../../studio/collection/kept'
import { denied } from '../../viewer'

const most = 100

const paletteOf = sql<string>`CASE WHEN ${proposal.paletteCount} = 1 THEN ${proposal.palette} ELSE ${proposal.paletteCount} || ' palettes' END`

const withPalettes = (db: Reading) =>
	db
		.select({
			proposal: proposal.id,
			name: client.name,
			season: { quarter: season.quarter, year: season.year },
			palette: paletteOf,
		})
		.from(proposal)
		.innerJoin(client, eq(client.id, proposal.clientId))
		.innerJoin(season, eq(season.id, proposal.seasonId))
		.innerJoin(draft, eq(draft.proposalId, proposal.id))

function sourcesIn(db: Reading, of: ClientId, at: SeasonId) {
	const filled = gt(proposal.paletteCount, 0)
	const earlier = withPalettes(db)
		.where(and(filled, eq(proposal.clientId, of), ne(proposal.seasonId, at)))
		.orderBy(desc(season.windowFrom))
		.limit(most)
		.all()
	const others = withPalettes(db)
		.where(and(filled, ne(proposal.clientId, of), isNull(client.archivedAt)))
		.orderBy(desc(eq(proposal.seasonId, at)), desc(season.windowFrom), client.name)
		.limit(most)
		.all()
	return { earlier, others }
}

/** Everything that a client's draft for a season can be started from. */
export async function readSources(
	viewer: Viewer,
	{ client: of, season: at }: { client: ClientId; season: SeasonId },
): Promise<Sources | undefined> {
	if (denied(viewer, 'change the draft', of) !== null) return undefined
	return read((db) => {
		const [who] = db
			.select({ id: client.id, name: client.name })
			.from(client)
			.where(and(eq(client.id, of), isNull(client.archivedAt)))
			.all()
		const [when] = db.select().from(season).where(eq(season.id, at)).all()
		if (who === undefined || when === undefined) return undefined
		const [there] = db
			.select({ proposal: proposal.id, palettes: proposal.paletteCount, revision: proposal.revisionNumber })
			.from(proposal)
			.where(and(eq(proposal.clientId, of), eq(proposal.seasonId, at)))
			.all()
		return {
			client: who,
			season: when,
			...sourcesIn(db, of, at),
			designs: collectionOf(db, at).collection.designs.map(({ name }) => name),
			recipes: libraryIn(db)
				.filter(({ quarter }) => quarter === when.quarter)
				.map(({ id, name }) => ({ id, name })),
			there: there ? { proposal: there.proposal, isFilled: there.palettes > 0 || there.revision > 0 } : null,
		}
	})
}
