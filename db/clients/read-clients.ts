import { and, asc, desc, eq, inArray, isNotNull, isNull, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { ClientId } from '@/lib/units/id'
import { type Reading, read } from '../open'
import { client, contact, container, person, place, proposal, season, siteColour } from '../schema'
import { denied, visibleTo } from '../viewer'

export type ClientRow = {
	readonly id: ClientId
	readonly name: string
	readonly kind: 'business' | 'household'
	readonly places: number
	readonly containers: number
}

export async function listClients(viewer: Viewer): Promise<ClientRow[]> {
	if (denied(viewer, 'see clients', null) !== null) return []
	return read((db) =>
		db
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
			.all(),
	)
}

function contactsOf(db: Reading, of: ClientId, { gone = false } = {}) {
	return db
		.select({ id: contact.id, name: person.name, address: person.email, may: contact.may })
		.from(contact)
		.innerJoin(person, eq(person.id, contact.personId))
		.where(and(eq(contact.clientId, of), gone ? isNotNull(contact.endedAt) : isNull(contact.endedAt)))
		.orderBy(asc(person.name))
		.all()
}

function placesOf(db: Reading, of: ClientId) {
	const places = db.select().from(place).where(eq(place.clientId, of)).orderBy(asc(place.position)).all()
	const ids = places.map(({ id }) => id)
	if (ids.length === 0) return []
	const here = and(inArray(container.placeId, ids), isNull(container.retiredAt))
	const containers = db.select().from(container).where(here).orderBy(asc(container.position)).all()
	const colours = db
		.select()
		.from(siteColour)
		.where(inArray(siteColour.placeId, ids))
		.orderBy(asc(siteColour.position))
		.all()
	return places.map((each) => ({
		...each,
		containers: containers.filter(({ placeId }) => placeId === each.id),
		colours: colours.filter(({ placeId }) => placeId === each.id),
	}))
}

function proposalsOf(db: Reading, of: ClientId) {
	return db
		.select({ id: proposal.id, quarter: season.quarter, year: season.year, state: proposal.state })
		.from(proposal)
		.innerJoin(season, eq(season.id, proposal.seasonId))
		.where(eq(proposal.clientId, of))
		.orderBy(desc(season.windowFrom))
		.all()
}

export type ClientPage = {
	readonly client: typeof client.$inferSelect
	readonly contacts: ReturnType<typeof contactsOf>
	/** Contacts to whom the door was closed. */
	readonly gone: ReturnType<typeof contactsOf>
	readonly places: ReturnType<typeof placesOf>
	readonly proposals: ReturnType<typeof proposalsOf>
}

export async function clientPage(viewer: Viewer, of: ClientId): Promise<ClientPage | undefined> {
	if (denied(viewer, 'see clients', of) !== null) return undefined
	return read((db) => {
		const [found] = db
			.select()
			.from(client)
			.where(and(eq(client.id, of), visibleTo(viewer, client.id)))
			.all()
		if (found === undefined) return undefined
		return {
			client: found,
			contacts: contactsOf(db, of),
			gone: contactsOf(db, of, { gone: true }),
			places: placesOf(db, of),
			proposals: proposalsOf(db, of),
		}
	})
}
