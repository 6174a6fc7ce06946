import { and, eq } from 'drizzle-orm'
import type { Act } from '@/lib/access/table'
import type { Viewer } from '@/lib/access/viewer'
import { type Day, dayOf } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import type { Reading } from '../open'
import { client, studio } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden, visibleTo } from '../viewer'

export type FoundAccount = {
	readonly ok: true
	readonly client: typeof client.$inferSelect
	readonly studio: typeof studio.$inferSelect
	readonly today: Day
}

/** The account of a client that the viewer may see and do `act` to; an erased client's can only be read. */
export function findAccount(
	db: Reading,
	viewer: Viewer,
	act: Act,
	of: ClientId,
	{ at }: Pick<Stamp, 'at'>,
): FoundAccount | Denied {
	const no = denied(viewer, act, of)
	if (no !== null) return no
	const [found] = db
		.select({ client, studio })
		.from(client)
		.innerJoin(studio, eq(studio.id, 1))
		.where(and(eq(client.id, of), visibleTo(viewer, client.id)))
		.all()
	if (found === undefined) return hidden
	if (found.client.archivedAt !== null && act === 'change accounts') return hidden
	return { ok: true, ...found, today: dayOf(at, found.studio.timeZone) }
}
