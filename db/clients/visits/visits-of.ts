import { and, desc, eq, inArray, isNotNull, ne, or } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Hash } from '@/lib/record/hash'
import type { Day } from '@/lib/units/day'
import type { ClientId, ProposalId } from '@/lib/units/id'
import type { ClientVisit, NamedPlace, StudioVisit } from '@/lib/visit/shown'
import type { InSeason } from '@/lib/visit/timeline'
import { type Reading, read } from '../../open'
import { client, proposal, season, visit } from '../../schema'
import type { Stamp } from '../../stamp'
import { denied, visibleTo } from '../../viewer'
import { todayOf } from './find'
import { placesNamed } from './read-visit'
import { visitRows } from './rows'

/** The design that went in for a season, or that is agreed to go in. */
export type ClientDesign = {
	readonly season: InSeason
	readonly proposal: ProposalId
	readonly revision: Hash
	readonly name: string
	readonly isIn: boolean
}

export type ClientVisits = {
	readonly name: string
	readonly today: Day
	readonly places: readonly NamedPlace[]
	readonly visits: readonly ClientVisit[]
	readonly designs: readonly ClientDesign[]
}

function shownTo(row: StudioVisit): ClientVisit {
	const { id, season: when, kind, state, day, came, photos, placeName, clientNote: note, reported, reportedOn } = row
	const place = placeName === '' ? null : placeName
	return {
		id,
		season: when,
		kind,
		state,
		day,
		came,
		photos,
		place,
		on: day ?? row.createdOn,
		note,
		reported,
		reportedOn,
	}
}

function designsOf(db: Reading, viewer: Viewer, of: ClientId): ClientDesign[] {
	const agreed = and(eq(proposal.clientId, of), inArray(proposal.state, ['approved', 'installed']))
	return db
		.select({ proposal, season })
		.from(proposal)
		.innerJoin(season, eq(season.id, proposal.seasonId))
		.where(and(agreed, visibleTo(viewer, proposal.clientId)))
		.orderBy(desc(season.windowFrom))
		.all()
		.flatMap(({ proposal: { id, revisionHash, palette, state }, season: { quarter, year, windowFrom: from } }) =>
			revisionHash === null
				? []
				: {
						season: { quarter, year, from },
						proposal: id,
						revision: revisionHash,
						name: palette,
						isIn: state === 'installed',
					},
		)
}

const most = 300

/** A client's history behind their own door: visits made and planned, and what they said is wrong. */
export async function visitsOf(
	viewer: Viewer,
	of: ClientId,
	stamp: Pick<Stamp, 'at'>,
): Promise<ClientVisits | undefined> {
	if (viewer.is !== 'contact' || denied(viewer, 'see the client', of) !== null) return undefined
	return read((db) => {
		const theirs = and(eq(client.id, of), visibleTo(viewer, client.id))
		const [found] = db.select({ name: client.name }).from(client).where(theirs).all()
		if (found === undefined) return undefined
		const isShown = or(isNotNull(visit.reportedBy), and(ne(visit.state, 'to plan'), ne(visit.state, 'dropped')))
		const mine = and(eq(visit.clientId, of), isShown, visibleTo(viewer, visit.clientId))
		return {
			name: found.name,
			today: todayOf(db, stamp),
			places: placesNamed(db, of),
			visits: visitRows(db, mine, 'latest first', most).map(shownTo),
			designs: designsOf(db, viewer, of),
		}
	})
}
