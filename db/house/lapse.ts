import { and, eq, isNull, lt } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { dayOf } from '@/lib/units/day'
import { write } from '../open'
import { append } from '../record/append'
import { proposal, studio } from '../schema'
import type { Stamp } from '../stamp'
import { denied } from '../viewer'

/** Notes in the record, once each, what has lapsed: that it has follows from the date and needs no writing. */
export async function noteLapses(viewer: Viewer, stamp: Stamp): Promise<number> {
	if (denied(viewer, 'keep house', null) !== null) return 0
	return write((tx) => {
		const [house] = tx.select().from(studio).all()
		if (house === undefined) return 0
		const over = and(
			eq(proposal.state, 'waiting for an answer'),
			lt(proposal.answerBy, dayOf(stamp.at, house.timeZone)),
			isNull(proposal.lapseNotedAt),
		)
		const rows = tx.select().from(proposal).where(over).all()
		for (const { id, clientId: client, revisionNumber: number } of rows) {
			tx.update(proposal).set({ lapseNotedAt: stamp.at }).where(eq(proposal.id, id)).run()
			append(tx, stamp, viewer, { act: 'proposal lapsed', object: `proposal ${id}`, client, facts: { number } })
		}
		return rows.length
	})
}
