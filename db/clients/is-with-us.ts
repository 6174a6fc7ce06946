import { and, eq, isNull } from 'drizzle-orm'
import type { ClientId } from '@/lib/units/id'
import type { Reading } from '../open'
import { client } from '../schema'

/** False for a client who is not there, and for one who was erased: nothing is added to them any more. */
export function isWithUs(db: Reading, of: ClientId): boolean {
	const mine = and(eq(client.id, of), isNull(client.archivedAt))
	return db.select({ id: client.id }).from(client).where(mine).all().length === 1
}
