import { and, asc, between, eq, isNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { dueReminder, isWaking, reminderDays } from '@/lib/season/due-reminder'
import { addDays, dayOf, hourOf } from '@/lib/units/day'
import type { ProposalId } from '@/lib/units/id'
import { read, type Tx, write } from '../open'
import { sendReminder } from '../proposals/remind'
import { client, proposal, studio } from '../schema'
import type { Stamp } from '../stamp'
import { denied } from '../viewer'

type House = typeof studio.$inferSelect

/** Proposals whose day to answer by is near enough for a reminder. */
function nearlyDue(house: House, { at }: Stamp): ProposalId[] {
	const today = dayOf(at, house.timeZone)
	const near = between(proposal.answerBy, today, addDays(today, Math.max(...reminderDays)))
	return read((db) =>
		db
			.select({ id: proposal.id })
			.from(proposal)
			.innerJoin(client, eq(client.id, proposal.clientId))
			.where(and(eq(proposal.state, 'waiting for an answer'), near, isNull(client.archivedAt)))
			.orderBy(asc(proposal.answerBy), asc(proposal.id))
			.all()
			.map(({ id }) => id),
	)
}

/** @returns whether one was due as the record stands now: it may have been answered a moment before */
function remindOne(tx: Tx, viewer: Viewer, id: ProposalId, { timeZone }: House, stamp: Stamp): boolean {
	const [row] = tx.select().from(proposal).where(eq(proposal.id, id)).all()
	if (row?.state !== 'waiting for an answer' || row.answerBy === null || row.publishedAt === null) return false
	const { answerBy, publishedAt, remindedAt } = row
	const remindedOn = remindedAt === null ? null : dayOf(remindedAt, timeZone)
	const awaited = { answerBy, remindedOn, publishedOn: dayOf(publishedAt, timeZone) }
	if (dueReminder(awaited, dayOf(stamp.at, timeZone)) === null) return false
	sendReminder(tx, viewer, row, stamp)
	return true
}

/** Reminds whoever is due, in the studio's waking hours, each in a transaction of its own. @returns how many */
export async function remindDue(viewer: Viewer, stamp: Stamp): Promise<number> {
	if (denied(viewer, 'keep house', null) !== null) return 0
	const [house] = read((db) => db.select().from(studio).all())
	if (house === undefined || !isWaking(hourOf(stamp.at, house.timeZone))) return 0
	return nearlyDue(house, stamp).filter((id) => write((tx) => remindOne(tx, viewer, id, house, stamp))).length
}
