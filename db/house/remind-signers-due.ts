import { and, asc, between, eq, isNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { standingOf } from '@/lib/agreement/standing'
import { dueReminder, isWaking, reminderDays } from '@/lib/season/due-reminder'
import { addDays, type Day, dayOf, hourOf } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import { sendAgreementReminder } from '../agreements/studio/remind'
import { read, type Tx, write } from '../open'
import { agreement, client, studio } from '../schema'
import type { Stamp } from '../stamp'
import { denied } from '../viewer'

/** Agreements whose day to sign by is near enough for a reminder. */
const nearlyDue = (today: Day): Id<'agreement'>[] =>
	read((db) =>
		db
			.select({ id: agreement.id })
			.from(agreement)
			.innerJoin(client, eq(client.id, agreement.clientId))
			.where(
				and(
					eq(agreement.state, 'to be signed'),
					between(agreement.signBy, today, addDays(today, Math.max(...reminderDays))),
					isNull(client.archivedAt),
				),
			)
			.orderBy(asc(agreement.signBy), asc(agreement.id))
			.all()
			.map(({ id }) => id),
	)

type At = { readonly today: Day; readonly timeZone: string }

/** @returns whether one was due as the record stands now: it may have been signed a moment before */
function remindOne(tx: Tx, viewer: Viewer, id: Id<'agreement'>, { today, timeZone }: At, stamp: Stamp): boolean {
	const [row] = tx.select().from(agreement).where(eq(agreement.id, id)).all()
	if (row === undefined || row.signBy === null || row.issuedAt === null) return false
	if (standingOf(row, today).is !== 'to be signed') return false
	const { signBy, issuedAt, remindedAt } = row
	const remindedOn = remindedAt === null ? null : dayOf(remindedAt, timeZone)
	const awaited = { answerBy: signBy, remindedOn, publishedOn: dayOf(issuedAt, timeZone) }
	if (dueReminder(awaited, today) === null) return false
	sendAgreementReminder(tx, viewer, row, stamp)
	return true
}

/** Reminds whoever has to sign soon, by the rule that reminds of proposals, in the studio's waking hours. @returns how many */
export async function remindSignersDue(viewer: Viewer, stamp: Stamp): Promise<number> {
	if (denied(viewer, 'keep house', null) !== null) return 0
	const [house] = read((db) => db.select().from(studio).all())
	if (house === undefined || !isWaking(hourOf(stamp.at, house.timeZone))) return 0
	const { timeZone } = house
	const at = { today: dayOf(stamp.at, timeZone), timeZone }
	return nearlyDue(at.today).filter((id) => write((tx) => remindOne(tx, viewer, id, at, stamp))).length
}
