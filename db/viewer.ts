import { and, eq, inArray, isNull, type SQL, sql } from 'drizzle-orm'
import type { SQLiteColumn } from 'drizzle-orm/sqlite-core'
import { decide } from '@/lib/access/decide'
import type { Act } from '@/lib/access/table'
import { mayOf, type Viewer, type Who } from '@/lib/access/viewer'
import type { ClientId, PersonId } from '@/lib/units/id'
import { prepared, read } from './open'
import { client, contact, staff } from './schema'

const made = (who: Who) => who as Viewer

const working = prepared((db) =>
	db
		.select({ role: staff.role })
		.from(staff)
		.where(and(eq(staff.personId, sql.placeholder('person')), isNull(staff.endedAt)))
		.prepare(),
)
const doorsOf = prepared((db) =>
	db
		.select({ client: contact.clientId, may: contact.may, seesMoney: contact.seesMoney })
		.from(contact)
		.innerJoin(client, eq(client.id, contact.clientId))
		.where(and(eq(contact.personId, sql.placeholder('person')), isNull(contact.endedAt), isNull(client.archivedAt)))
		.prepare(),
)

/** The one maker of a viewer: from the record as it stands now, so that what is taken away is gone at once. */
export async function viewerOf(who: PersonId | 'nobody' | 'system'): Promise<Viewer> {
	if (who === 'nobody') return made({ is: 'nobody' })
	if (who === 'system') return made({ is: 'system' })
	const [member] = read((db) => working(db).all({ person: who }))
	if (member !== undefined) return made({ is: 'staff', person: who, role: member.role })
	const doors = read((db) => doorsOf(db).all({ person: who }))
	if (doors.length === 0) return made({ is: 'nobody' })
	return made({ is: 'contact', person: who, clients: new Map(doors.map((door) => [door.client, mayOf(door)])) })
}

/** The condition that narrows every read and every write: rows of the clients that the viewer has to do with. */
export function visibleTo(viewer: Viewer, clientId: SQLiteColumn): SQL {
	if (viewer.is === 'staff' || viewer.is === 'system') return sql`1`
	if (viewer.is === 'contact') return inArray(clientId, [...viewer.clients.keys()])
	return sql`0`
}

/** The same for a statement that is prepared once: `seenBy` says for whom it is asked. */
export const visibleNow = (clientId: SQLiteColumn): SQL =>
	sql`(${sql.placeholder('all')} = 1 OR ${clientId} IN (SELECT value FROM json_each(${sql.placeholder('clients')})))`

export function seenBy(viewer: Viewer): { readonly all: 0 | 1; readonly clients: string } {
	const all = viewer.is === 'staff' || viewer.is === 'system' ? 1 : 0
	return { all, clients: JSON.stringify(viewer.is === 'contact' ? [...viewer.clients.keys()] : []) }
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
