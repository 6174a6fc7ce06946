import { and, asc, eq, isNull, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { looksFor } from '@/lib/format/look-for'
import type { ClientId } from '@/lib/units/id'
import { type Reading, read } from '../open'
import { client, contact, container, person, place } from '../schema'
import { denied, visibleTo } from '../viewer'

export type ClientRow = {
	readonly id: ClientId
	readonly name: string
	readonly kind: 'business' | 'household'
	readonly places: number
	readonly containers: number
}

/** What a client may be looked for by, beside their name: places and contacts who may come in, by client. */
function textsOf(db: Reading): ReadonlyMap<ClientId, readonly string[]> {
	const places = db.select({ of: place.clientId, a: place.name, b: place.address }).from(place).all()
	const contacts = db
		.select({ of: contact.clientId, a: person.name, b: person.email })
		.from(contact)
		.innerJoin(person, eq(person.id, contact.personId))
		.where(isNull(contact.endedAt))
		.all()
	const all = new Map<ClientId, string[]>()
	for (const { of, a, b } of [...places, ...contacts]) {
		const texts = all.get(of) ?? []
		texts.push(a, b)
		all.set(of, texts)
	}
	return all
}

/** By name; where words are given, those alone whose name, place or contact has every one of them. */
export async function listClients(viewer: Viewer, words = ''): Promise<ClientRow[]> {
	if (denied(viewer, 'see clients', null) !== null) return []
	return read((db) => {
		const rows = db
			.select({
				id: client.id,
				name: client.name,
				kind: client.kind,
				places: sql<number>`count(DISTINCT ${place.id})`,
				containers: sql<number>`count(${container.id})`,
			})
			.from(client)
			.leftJoin(place, eq(place.clientId, client.id))
			.leftJoin(container, and(eq(container.placeId, place.id), isNull(container.retiredAt)))
			.where(and(isNull(client.archivedAt), visibleTo(viewer, client.id)))
			.groupBy(client.id)
			.orderBy(asc(client.name))
			.all()
		if (words.trim() === '') return rows
		const [isLookedFor, texts] = [looksFor(words), textsOf(db)]
		return rows.filter(({ id, name }) => isLookedFor([name, ...(texts.get(id) ?? [])]))
	})
}
