import { and, asc, desc, eq, isNull, type SQL } from 'drizzle-orm'
import { dayOf } from '@/lib/units/day'
import type { StudioVisit } from '@/lib/visit/shown'
import type { Reading } from '../../open'
import { client, person, place, season, studio, visit } from '../../schema'
import { photosOf } from './photos/rows'

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
