import { and, asc, desc, eq, isNull, notExists, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Quarter } from '@/lib/season/season'
import type { Day } from '@/lib/units/day'
import type { ClientId, SeasonId } from '@/lib/units/id'
import { planAgreedVisitsIn } from '../agreements/plan-visits'
import { read, write } from '../open'
import { append } from '../record/append'
import { client, proposal, season } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied } from '../viewer'

export type PlannedSeason = typeof season.$inferSelect

/** The newest first. */
export async function listSeasons(viewer: Viewer): Promise<PlannedSeason[]> {
	if (denied(viewer, 'see the season', null) !== null) return []
	return read((db) => db.select().from(season).orderBy(desc(season.windowFrom)).all())
}

/** Clients who have no proposal for a season yet, the first fifty by name, and how many there are. */
export async function clientsWithout(
	viewer: Viewer,
	of: SeasonId,
): Promise<{ count: number; first: { id: ClientId; name: string }[] }> {
	if (denied(viewer, 'see the season', null) !== null) return { count: 0, first: [] }
	return read((db) => {
		const theirs = db
			.select({ id: proposal.id })
			.from(proposal)
			.where(and(eq(proposal.clientId, client.id), eq(proposal.seasonId, of)))
		const rows = db
			.select({ id: client.id, name: client.name, count: sql<number>`count(*) OVER ()` })
			.from(client)
			.where(and(isNull(client.archivedAt), notExists(theirs)))
			.orderBy(asc(client.name))
			.limit(50)
			.all()
		return { count: rows[0]?.count ?? 0, first: rows.map(({ id, name }) => ({ id, name })) }
	})
}

export type SeasonPlan = {
	readonly quarter: Quarter
	readonly year: number
	readonly windowFrom: Day
	readonly windowTo: Day
	readonly answerBy: Day
}
export type Planned =
	| { readonly ok: true; readonly id: SeasonId }
	| { readonly ok: false; readonly why: 'there already' | 'dates' }
	| Denied

export async function planSeason(viewer: Viewer, plan: SeasonPlan, stamp: Stamp): Promise<Planned> {
	const no = denied(viewer, 'plan a season', null)
	if (no !== null) return no
	if (plan.answerBy > plan.windowFrom || plan.windowFrom > plan.windowTo) return { ok: false, why: 'dates' }
	return write((tx): Planned => {
		const id = stamp.id<'season'>()
		const made = tx
			.insert(season)
			.values({ id, ...plan })
			.onConflictDoNothing()
			.run().changes
		if (made === 0) return { ok: false, why: 'there already' }
		append(tx, stamp, viewer, {
			act: 'season planned',
			object: `season ${id}`,
			client: null,
			facts: { quarter: plan.quarter, year: plan.year },
		})
		planAgreedVisitsIn(tx, stamp, viewer, plan)
		return { ok: true, id }
	})
}
