import { and, eq, isNull } from 'drizzle-orm'
import type { Act } from '@/lib/access/table'
import type { Viewer } from '@/lib/access/viewer'
import { type Day, dayOf } from '@/lib/units/day'
import type { ClientId, PlaceId, VisitId } from '@/lib/units/id'
import type { Reading } from '../../open'
import { client, place, visit } from '../../schema'
import type { Stamp } from '../../stamp'
import { timeZoneOf } from '../../studio/time-zone'
import { type Denied, denied, hidden, visibleTo } from '../../viewer'

export type FoundVisit = {
	readonly ok: true
	readonly row: typeof visit.$inferSelect
	readonly today: Day
}

/** The date on the wall of the studio. */
export const todayOf = (db: Reading, { at }: Pick<Stamp, 'at'>): Day => dayOf(at, timeZoneOf(db))

/** A visit that the viewer may do `act` to; none of a client who is gone. */
export function findVisit(
	db: Reading,
	viewer: Viewer,
	act: Act,
	id: VisitId,
	stamp: Pick<Stamp, 'at'>,
): FoundVisit | Denied {
	const [found] = db
		.select({ row: visit })
		.from(visit)
		.innerJoin(client, eq(client.id, visit.clientId))
		.where(and(eq(visit.id, id), isNull(client.archivedAt), visibleTo(viewer, visit.clientId)))
		.all()
	if (found === undefined) return hidden
	const no = denied(viewer, act, found.row.clientId)
	return no ?? { ok: true, row: found.row, today: todayOf(db, stamp) }
}

/** Whether a place is the client's own; all of them together are. */
export function isPlaceOf(db: Reading, of: ClientId, id: PlaceId | null): boolean {
	if (id === null) return true
	const mine = and(eq(place.id, id), eq(place.clientId, of))
	return db.select({ id: place.id }).from(place).where(mine).all().length === 1
}
