import { and, desc, eq, inArray, isNotNull, sql } from 'drizzle-orm'
import type { Day } from '@/lib/units/day'
import type { ClientId, ProposalId, SeasonId } from '@/lib/units/id'
import type { Reading } from '../../open'
import { proposal, season, type visit } from '../../schema'
import type { Stamp } from '../../stamp'
import { isWithUs } from '../is-with-us'

/** The design that a client has for a season, once one was published. */
export function designOf(db: Reading, client: ClientId, of: SeasonId): ProposalId | null {
	const mine = and(eq(proposal.clientId, client), eq(proposal.seasonId, of), isNotNull(proposal.revisionHash))
	return db.select({ id: proposal.id }).from(proposal).where(mine).all()[0]?.id ?? null
}

/** The season that stands at the client's door: the last that was installed there, else the one that runs. */
export function seasonAtTheDoor(db: Reading, client: ClientId, today: Day): SeasonId | undefined {
	const installed = db
		.select({ id: proposal.seasonId })
		.from(proposal)
		.where(and(eq(proposal.clientId, client), eq(proposal.state, 'installed')))
	const isIn = inArray(season.id, installed)
	const hasBegun = sql`${season.windowFrom} <= ${today}`
	const [first] = db
		.select({ id: season.id })
		.from(season)
		.orderBy(desc(isIn), desc(sql`(${isIn} OR ${hasBegun})`), desc(season.windowFrom))
		.limit(1)
		.all()
	return first?.id
}

type Where = { readonly client: ClientId; readonly season: SeasonId }

/** A visit that nothing is known of yet, not kept; undefined without such a client or such a season. */
export function newVisit(
	db: Reading,
	stamp: Stamp,
	{ client, season: of }: Where,
): typeof visit.$inferSelect | undefined {
	const planned = db.select({ id: season.id }).from(season).where(eq(season.id, of)).all()
	if (planned.length === 0 || !isWithUs(db, client)) return undefined
	const words = { came: '', clientNote: '', studioNote: '', reported: '' }
	const where = { clientId: client, seasonId: of, proposalId: designOf(db, client, of), placeId: null }
	const when = { day: null, createdAt: stamp.at, doneAt: null, reportedBy: null, reportedAt: null }
	return { id: stamp.id<'visit'>(), ...where, kind: 'check', state: 'to plan', ...words, ...when }
}
