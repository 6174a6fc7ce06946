import { and, asc, eq, gte, isNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { onceFor } from '@/lib/record/once-for'
import type { RemindedAll } from '@/lib/season/reminded-words'
import { dayOf } from '@/lib/units/day'
import type { Id, ProposalId, SeasonId } from '@/lib/units/id'
import { read } from '../open'
import { remind } from '../proposals/remind'
import { client, proposal, season, studio } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'

type Reminding = { readonly season: SeasonId; readonly again: boolean; readonly once: Id<'once'> }
type Told = ({ readonly ok: true } & RemindedAll) | Denied

/** Who owes an answer; undefined where there is no such season. */
function waitingIn(of: SeasonId, { at }: Stamp): ProposalId[] | undefined {
	return read((db) => {
		const [found] = db
			.select({ studio })
			.from(season)
			.innerJoin(studio, eq(studio.id, 1))
			.where(eq(season.id, of))
			.all()
		if (found === undefined) return undefined
		const waits = and(
			eq(proposal.seasonId, of),
			eq(proposal.state, 'waiting for an answer'),
			gte(proposal.answerBy, dayOf(at, found.studio.timeZone)),
			isNull(client.archivedAt),
		)
		return db
			.select({ id: proposal.id })
			.from(proposal)
			.innerJoin(client, eq(client.id, proposal.clientId))
			.where(waits)
			.orderBy(asc(proposal.answerBy), asc(proposal.id))
			.all()
			.map(({ id }) => id)
	})
}

/**
 * Reminds everybody of a season who owes an answer, each in a transaction of its own; who was reminded within two days
 * only when `again` is said. Sent twice, or broken off and sent again, it reminds nobody twice.
 */
export async function remindAll(viewer: Viewer, { season: of, again, once }: Reminding, stamp: Stamp): Promise<Told> {
	const no = denied(viewer, 'remind', null)
	if (no !== null) return no
	const waiting = waitingIn(of, stamp)
	if (waiting === undefined) return hidden
	let [reminded, lately] = [0, 0]
	for (const id of waiting) {
		const said = await remind(viewer, { proposal: id, again, once: onceFor(once, id) }, stamp)
		if (said.ok) reminded += 1
		else if (said.why === 'reminded lately') lately += 1
	}
	return { ok: true, reminded, lately }
}
