import { and, eq, ne } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Day } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import type { StudioVisit } from '@/lib/visit/shown'
import { read } from '../../open'
import { visit } from '../../schema'
import type { Stamp } from '../../stamp'
import { denied, visibleTo } from '../../viewer'
import { todayOf } from './find'
import { visitRows } from './rows'

export type VisitBook = {
	readonly today: Day
	readonly toPlan: readonly StudioVisit[]
	readonly planned: readonly StudioVisit[]
	readonly made: readonly StudioVisit[]
}

const most = { open: 300, made: 20 }

/** What is to be planned, what is planned, by day, and what was made lately. */
export async function readVisits(viewer: Viewer, stamp: Pick<Stamp, 'at'>): Promise<VisitBook | undefined> {
	if (denied(viewer, 'see visits', null) !== null) return undefined
	return read((db) => ({
		today: todayOf(db, stamp),
		toPlan: visitRows(db, eq(visit.state, 'to plan'), 'latest first', most.open),
		planned: visitRows(db, eq(visit.state, 'planned'), 'next first', most.open),
		made: visitRows(db, eq(visit.state, 'done'), 'latest first', most.made),
	}))
}

/** One client's visits, the latest first, those that were dropped left out. */
export async function visitsAt(viewer: Viewer, of: ClientId): Promise<StudioVisit[]> {
	if (denied(viewer, 'see visits', of) !== null) return []
	const theirs = and(eq(visit.clientId, of), ne(visit.state, 'dropped'), visibleTo(viewer, visit.clientId))
	return read((db) => visitRows(db, theirs, 'latest first', most.open))
}
