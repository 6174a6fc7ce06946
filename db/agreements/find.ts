import { and, eq, sql } from 'drizzle-orm'
import type { Act } from '@/lib/access/table'
import type { Viewer } from '@/lib/access/viewer'
import { standingOf } from '@/lib/agreement/standing'
import type { State } from '@/lib/agreement/state'
import { type Day, dayOf } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import { prepared, type Reading } from '../open'
import { agreement, client, studio } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden, seenBy, visibleNow } from '../viewer'

export type AgreementRow = typeof agreement.$inferSelect

export type FoundAgreement = {
	readonly ok: true
	readonly row: AgreementRow
	readonly client: typeof client.$inferSelect
	readonly studio: typeof studio.$inferSelect
	readonly today: Day
	readonly state: State
}

/** Of an erased client there is nothing but to be read. */
const reading: ReadonlySet<Act> = new Set(['see agreements', 'see the agreement', 'read its money'])

const agreementFor = prepared((db) =>
	db
		.select({ row: agreement, client, studio })
		.from(agreement)
		.innerJoin(client, eq(client.id, agreement.clientId))
		.innerJoin(studio, eq(studio.id, 1))
		.where(and(eq(agreement.id, sql.placeholder('id')), visibleNow(agreement.clientId)))
		.prepare(),
)

/** An agreement that the viewer may see and do `act` to, with where it stands today in the studio's time zone. */
export function findAgreement(
	db: Reading,
	viewer: Viewer,
	act: Act,
	id: Id<'agreement'>,
	{ at }: Pick<Stamp, 'at'>,
): FoundAgreement | Denied {
	const [found] = agreementFor(db).all({ id, ...seenBy(viewer) })
	if (found === undefined) return hidden
	const no = denied(viewer, act, found.row.clientId)
	if (no !== null) return no
	if (viewer.is === 'contact' && found.row.issued === null) return hidden
	if (found.client.archivedAt !== null && !reading.has(act)) return hidden
	const today = dayOf(at, found.studio.timeZone)
	return { ok: true, ...found, today, state: standingOf(found.row, today) }
}
