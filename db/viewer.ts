import { and, eq, inArray, isNull, type SQL, sql } from 'drizzle-orm'
import type { SQLiteColumn } from 'drizzle-orm/sqlite-core'
import { decide } from '@/lib/access/decide'
import type { Act } from '@/lib/access/table'
import type { Viewer, Who } from '@/lib/access/viewer'
import type { ClientId, PersonId } from '@/lib/units/id'
import { read } from './open'
import { client, contact, staff } from './schema'

const made = (who: Who) => who as Viewer

/** The one maker of a viewer: from the record as it stands now, so that what is taken away is gone at once. */
export async function viewerOf(who: PersonId | 'nobody' | 'system'): Promise<Viewer> {
	if (who === 'nobody') return made({ is: 'nobody' })
	if (who === 'system') return made({ is: 'system' })
	const [member] = read((db) =>
		db
			.select()
			.from(staff)
			.where(and(eq(staff.personId, who), isNull(staff.endedAt)))
			.all(),
	)
	if (member !== undefined) return made({ is: 'staff', person: who, role: member.role })
	const doors = read((db) =>
		db
			.select({ client: contact.clientId, may: contact.may })
			.from(contact)
			.innerJoin(client, eq(client.id, contact.clientId))
			.where(and(eq(contact.personId, who), isNull(contact.endedAt), isNull(client.archivedAt)))
			.all(),
	)
	if (doors.length === 0) return made({ is: 'nobody' })
	return made({ is: 'contact', person: who, clients: new Map(doors.map(({ client: id, may }) => [id, may])) })
}

/** The condition that narrows every read and every write: rows of the clients that the viewer has to do with. */
export function visibleTo(viewer: Viewer, clientId: SQLiteColumn): SQL {
	if (viewer.is === 'staff' || viewer.is === 'system') return sql`1`
	if (viewer.is === 'contact') return inArray(clientId, [...viewer.clients.keys()])
	return sql`0`
}

export type Denied = { readonly ok: false; readonly why: 'hidden' | 'forbidden' }

/** Null when the viewer may; else how the refusal reads: hidden is told as 404, forbidden as 403. */
export function denied(viewer: Viewer, act: Act, of: ClientId | null): Denied | null {
	const said = decide(viewer, act, of)
	return said === 'may' ? null : { ok: false, why: said }
}

export const hidden: Denied = { ok: false, why: 'hidden' }

/** Who did it, as the record names them. */
export function actorOf(viewer: Viewer): string {
	return viewer.is === 'staff' || viewer.is === 'contact' ? `${viewer.is} ${viewer.person}` : viewer.is
}
