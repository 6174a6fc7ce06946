import { and, asc, desc, eq, isNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Quarter } from '@/lib/season/season'
import type { Day } from '@/lib/units/day'
import type { ClientId, SeasonId, VisitId } from '@/lib/units/id'
import type { NamedPlace, StudioVisit } from '@/lib/visit/shown'
import { type Reading, read } from '../../open'
import { client, place, season, visit } from '../../schema'
import type { Stamp } from '../../stamp'
import { denied, visibleTo } from '../../viewer'
import { todayOf } from './find'
import { seasonAtTheDoor } from './new-visit'
import { visitRows } from './rows'

export function placesNamed(db: Reading, of: ClientId): NamedPlace[] {
	return db
		.select({ id: place.id, name: place.name })
		.from(place)
		.where(eq(place.clientId, of))
		.orderBy(asc(place.position))
		.all()
}

export type VisitPage = { readonly visit: StudioVisit; readonly places: readonly NamedPlace[]; readonly today: Day }

/** One visit as the studio plans it and writes it down. */
export async function readVisit(viewer: Viewer, id: VisitId, stamp: Pick<Stamp, 'at'>): Promise<VisitPage | undefined> {
	if (denied(viewer, 'see visits', null) !== null) return undefined
	return read((db) => {
		const [found] = visitRows(db, and(eq(visit.id, id), visibleTo(viewer, visit.clientId)), 'latest first', 1)
		return found && { visit: found, places: placesNamed(db, found.client), today: todayOf(db, stamp) }
	})
}

export type NewVisit = {
	readonly name: string
	readonly places: readonly NamedPlace[]
	readonly seasons: readonly { readonly id: SeasonId; readonly quarter: Quarter; readonly year: number }[]
	readonly season: SeasonId | undefined
	readonly today: Day
}

const mostSeasons = 6

/** What a visit of the studio's own making is begun with: the client's places, the seasons, the one that stands at the door. */
export async function readNewVisit(
	viewer: Viewer,
	of: ClientId,
	stamp: Pick<Stamp, 'at'>,
): Promise<NewVisit | undefined> {
	if (denied(viewer, 'record visits', null) !== null) return undefined
	return read((db) => {
		const withUs = and(eq(client.id, of), isNull(client.archivedAt), visibleTo(viewer, client.id))
		const [found] = db.select({ name: client.name }).from(client).where(withUs).all()
		if (found === undefined) return undefined
		const today = todayOf(db, stamp)
		const seasons = db
			.select({ id: season.id, quarter: season.quarter, year: season.year })
			.from(season)
			.orderBy(desc(season.windowFrom))
			.limit(mostSeasons)
			.all()
		return { name: found.name, places: placesNamed(db, of), seasons, season: seasonAtTheDoor(db, of, today), today }
	})
}
