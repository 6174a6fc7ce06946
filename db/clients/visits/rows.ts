import { and, asc, desc, eq, isNull, type SQL } from 'drizzle-orm'
import type { Quarter } from '@/lib/season/season'
import { type Day, dayOf } from '@/lib/units/day'
import type { ClientId, PlaceId, VisitId } from '@/lib/units/id'
import type { VisitKind, VisitState } from '@/lib/visit/visit'
import type { Reading } from '../../open'
import { client, person, place, season, studio, visit } from '../../schema'
import { photosOf, type VisitPhoto } from './photos/rows'

/** A visit as the studio reads it. */
export type StudioVisit = {
	readonly id: VisitId
	readonly client: ClientId
	readonly clientName: string
	readonly place: PlaceId | null
	/** Empty for all of the client's places. */
	readonly placeName: string
	readonly season: { readonly quarter: Quarter; readonly year: number; readonly from: Day }
	readonly kind: VisitKind
	readonly state: VisitState
	readonly day: Day | null
	readonly came: string
	readonly clientNote: string
	readonly studioNote: string
	/** Empty where nobody said that something is wrong. */
	readonly reported: string
	readonly reportedBy: string
	readonly reportedOn: Day | null
	readonly createdOn: Day
	readonly photos: readonly VisitPhoto[]
}

type Order = 'latest first' | 'next first'

/** Visits of clients who are with us, with their photos; two questions, however many there are. */
export function visitRows(db: Reading, where: SQL | undefined, order: Order, most: number): StudioVisit[] {
	const rows = db
		.select({ visit, clientName: client.name, placeName: place.name, reporter: person.name, season, studio })
		.from(visit)
		.innerJoin(client, eq(client.id, visit.clientId))
		.innerJoin(season, eq(season.id, visit.seasonId))
		.innerJoin(studio, eq(studio.id, 1))
		.leftJoin(place, eq(place.id, visit.placeId))
		.leftJoin(person, eq(person.id, visit.reportedBy))
		.where(and(isNull(client.archivedAt), where))
		.orderBy(order === 'next first' ? asc(visit.day) : desc(visit.day), desc(visit.createdAt), asc(visit.id))
		.limit(most)
		.all()
	const photos = photosOf(
		db,
		rows.map((row) => row.visit.id),
	)
	return rows.map(({ visit: row, clientName, placeName, reporter, season: when, studio: { timeZone } }) => {
		const { id, clientId, placeId, kind, state, day, came, clientNote, studioNote, reported, reportedAt } = row
		const { quarter, year, windowFrom: from } = when
		const named = { id, client: clientId, clientName, place: placeId, placeName: placeName ?? '' }
		const said = { reported, reportedBy: reporter ?? '', createdOn: dayOf(row.createdAt, timeZone) }
		const reportedOn = reportedAt === null ? null : dayOf(reportedAt, timeZone)
		const notes = { came, clientNote, studioNote }
		return {
			...named,
			season: { quarter, year, from },
			kind,
			state,
			day,
			...notes,
			...said,
			reportedOn,
			photos: photos(id),
		}
	})
}
