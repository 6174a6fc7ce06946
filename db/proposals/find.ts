import { and, eq, sql } from 'drizzle-orm'
import type { Act } from '@/lib/access/table'
import type { Viewer } from '@/lib/access/viewer'
import { type State, stateOf } from '@/lib/proposal/state'
import { type Day, dayOf } from '@/lib/units/day'
import type { ProposalId } from '@/lib/units/id'
import { prepared, type Reading } from '../open'
import { client, proposal, season, studio } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden, seenBy, visibleNow } from '../viewer'

type Row = typeof proposal.$inferSelect

export type Found = {
	readonly ok: true
	readonly row: Row
	readonly client: typeof client.$inferSelect
	readonly season: typeof season.$inferSelect
	readonly studio: typeof studio.$inferSelect
	readonly today: Day
	readonly state: State
}

/** Of an erased client there is nothing but to be read. */
const reading: ReadonlySet<Act> = new Set(['see the draft', 'see the costing', 'see the proposal'])

const proposalFor = prepared((db) =>
	db
		.select({ row: proposal, client, season, studio })
		.from(proposal)
		.innerJoin(client, eq(client.id, proposal.clientId))
		.innerJoin(season, eq(season.id, proposal.seasonId))
		.innerJoin(studio, eq(studio.id, 1))
		.where(and(eq(proposal.id, sql.placeholder('id')), visibleNow(proposal.clientId)))
		.prepare(),
)

/** A proposal that the viewer may see and do `act` to, with where it stands today in the studio's time zone. */
export function findProposal(
	db: Reading,
	viewer: Viewer,
	act: Act,
	id: ProposalId,
	{ at }: Pick<Stamp, 'at'>,
): Found | Denied {
	const [found] = proposalFor(db).all({ id, ...seenBy(viewer) })
	if (found === undefined) return hidden
	const no = denied(viewer, act, found.row.clientId)
	if (no !== null) return no
	if (found.client.archivedAt !== null && !reading.has(act)) return hidden
	const today = dayOf(at, found.studio.timeZone)
	const { state, revisionHash, answerBy } = found.row
	return { ok: true, ...found, today, state: stateOf(state, revisionHash, answerBy, today) }
}
