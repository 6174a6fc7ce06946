import { and, eq, inArray } from 'drizzle-orm'
import type { ClientId, PhotoId } from '@/lib/units/id'
import type { Tx } from '../../open'
import { photo, visit } from '../../schema'

/** An erased client's visits: that and when they were made stays, every word and photo goes, and none is made any more. */
export function eraseVisits(tx: Tx, of: ClientId): PhotoId[] {
	const blank = { came: '', clientNote: '', studioNote: '', reported: '' }
	tx.update(visit).set(blank).where(eq(visit.clientId, of)).run()
	const open = and(eq(visit.clientId, of), inArray(visit.state, ['to plan', 'planned']))
	tx.update(visit).set({ state: 'dropped' }).where(open).run()
	return tx
		.delete(photo)
		.where(eq(photo.clientId, of))
		.returning({ id: photo.id })
		.all()
		.map(({ id }) => id)
}
