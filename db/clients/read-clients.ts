import { and, asc, desc, eq, inArray, isNotNull, isNull, ne } from 'drizzle-orm'
import { mayOf, type Viewer } from '@/lib/access/viewer'
import type { ClientId, PersonId } from '@/lib/units/id'
import { type Reading, read } from '../open'
import { answer, client, contact, container, person, place, proposal, revision, season, siteColour } from '../schema'
import { timeZoneOf } from '../studio/time-zone'
import { denied, visibleTo } from '../viewer'

/** Other clients whose door is open to a contact of this one, by person. */
function doorsElsewhere(db: Reading, of: ClientId): ReadonlyMap<PersonId, string[]> {
	const here = db.select({ id: contact.personId }).from(contact).where(eq(contact.clientId, of))
	const rows = db
		.select({ person: contact.personId, name: client.name })
		.from(contact)
		.innerJoin(client, eq(client.id, contact.clientId))
		.where(
			and(
				ne(contact.clientId, of),
				inArray(contact.personId, here),
				isNull(contact.endedAt),
				isNull(client.archivedAt),
			),
		)
		.orderBy(asc(client.name))
		.all()
	const all = new Map<PersonId, string[]>()
	for (const { person: who, name } of rows) all.set(who, [...(all.get(who) ?? []), name])
	return all
}

type Elsewhere = ReturnType<typeof doorsElsewhere>

function contactsOf(db: Reading, of: ClientId, elsewhere: Elsewhere, { gone = false } = {}) {
	return db
		.select({
			id: contact.id,
			person: person.id,
			name: person.name,
			address: person.email,
			may: contact.may,
			seesMoney: contact.seesMoney,
		})
		.from(contact)
		.innerJoin(person, eq(person.id, contact.personId))
		.where(and(eq(contact.clientId, of), gone ? isNotNull(contact.endedAt) : isNull(contact.endedAt)))
		.orderBy(asc(person.name))
		.all()
		.map(({ person: who, may, seesMoney, ...row }) => ({
			...row,
			may: mayOf({ may, seesMoney }),
			elsewhere: elsewhere.get(who) ?? [],
		}))
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

/** Every answer that was given to a revision of theirs, the latest first; `by` is whoever wrote it. */
function answersOf(db: Reading, of: ClientId) {
	return db
		.select({
			proposal: revision.proposalId,
			kind: answer.kind,
			reference: answer.reference,
			at: answer.at,
			word: answer.word,
			by: person.name,
		})
		.from(answer)
		.innerJoin(revision, eq(revision.id, answer.revisionId))
		.innerJoin(proposal, eq(proposal.id, revision.proposalId))
		.innerJoin(person, eq(person.id, answer.by))
		.where(eq(proposal.clientId, of))
		.orderBy(desc(answer.at))
		.all()
}

function proposalsOf(db: Reading, of: ClientId) {
	const answers = answersOf(db, of)
	return db
		.select({ id: proposal.id, quarter: season.quarter, year: season.year, state: proposal.state })
		.from(proposal)
		.innerJoin(season, eq(season.id, proposal.seasonId))
		.where(eq(proposal.clientId, of))
		.orderBy(desc(season.windowFrom))
		.all()
		.map((row) => ({ ...row, answers: answers.filter(({ proposal: to }) => to === row.id) }))
}

export type ClientPage = {
	readonly client: typeof client.$inferSelect
	/** Of the studio. */
	readonly timeZone: string
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
		const elsewhere = doorsElsewhere(db, of)
		return {
			client: found,
			timeZone: timeZoneOf(db),
			contacts: contactsOf(db, of, elsewhere),
			gone: contactsOf(db, of, elsewhere, { gone: true }),
			places: placesOf(db, of),
			proposals: proposalsOf(db, of),
		}
	})
}
