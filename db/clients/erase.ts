import { and, eq, inArray, isNull, notInArray } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { emptyDraft } from '@/lib/proposal/draft'
import type { ClientId, PersonId } from '@/lib/units/id'
import { type Tx, write } from '../open'
import { append } from '../record/append'
import {
	client,
	contact,
	container,
	draft,
	erasure,
	outbox,
	person,
	place,
	proposal,
	sealedText,
	session,
	signInToken,
	siteColour,
	staff,
} from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'

const erased = 'erased'

/** Contacts of this client who belong to no other and are not staff: they go as persons too. */
function personsOf(tx: Tx, of: ClientId): PersonId[] {
	const own = tx
		.select({ id: contact.personId })
		.from(contact)
		.where(eq(contact.clientId, of))
		.all()
		.map(({ id }) => id)
	const elsewhere = tx
		.select({ id: contact.personId })
		.from(contact)
		.where(and(inArray(contact.personId, own), notInArray(contact.clientId, [of])))
		.all()
	const working = tx.select({ id: staff.personId }).from(staff).where(inArray(staff.personId, own)).all()
	const kept = new Set([...elsewhere, ...working].map(({ id }) => id))
	return own.filter((id) => !kept.has(id))
}

function erasePersons(tx: Tx, people: readonly PersonId[]): void {
	for (const id of people) {
		const [row] = tx.select({ email: person.email }).from(person).where(eq(person.id, id)).all()
		if (row !== undefined) tx.delete(signInToken).where(eq(signInToken.identifier, row.email)).run()
		tx.delete(session).where(eq(session.userId, id)).run()
		tx.update(person)
			.set({ name: erased, email: `${id}@erased.invalid`, handle: id, emailVerified: null })
			.where(eq(person.id, id))
			.run()
	}
}

function erasePlaces(tx: Tx, of: ClientId): void {
	const here = tx.select({ id: place.id }).from(place).where(eq(place.clientId, of))
	tx.update(container).set({ name: erased }).where(inArray(container.placeId, here)).run()
	tx.update(siteColour).set({ name: erased }).where(inArray(siteColour.placeId, here)).run()
	tx.update(place).set({ name: erased, address: erased, accessNote: '' }).where(eq(place.clientId, of)).run()
}

/** What was offered lies sealed; these are the drafts, and the palette in the ledger. */
function eraseProposals(tx: Tx, of: ClientId): void {
	const own = tx.select({ id: proposal.id }).from(proposal).where(eq(proposal.clientId, of))
	tx.update(proposal).set({ palette: '' }).where(eq(proposal.clientId, of)).run()
	tx.update(draft)
		.set({ document: JSON.stringify(emptyDraft({ from: null, to: null, answerBy: null })) })
		.where(inArray(draft.proposalId, own))
		.run()
}

/**
 * Erases a client's words on lawful demand: names, addresses, letters, notes. What was done and when, and every
 * hash, stays, and the chain still holds. Deleted bytes are overwritten; what the log still holds goes within the hour.
 */
export async function eraseClient(viewer: Viewer, of: ClientId, stamp: Stamp): Promise<{ readonly ok: true } | Denied> {
	const no = denied(viewer, 'erase a client', of)
	if (no !== null || viewer.is !== 'staff') return no ?? hidden
	return write((tx): { ok: true } | Denied => {
		if (tx.select().from(client).where(eq(client.id, of)).all().length === 0) return hidden
		tx.insert(erasure).values({ id: stamp.id<'erasure'>(), clientId: of, at: stamp.at, by: viewer.person }).run()
		append(tx, stamp, viewer, { act: 'client erased', object: `client ${of}`, client: of })
		tx.delete(sealedText).where(eq(sealedText.clientId, of)).run()
		const people = personsOf(tx, of)
		const unsent = and(inArray(outbox.personId, people), isNull(outbox.sentAt), isNull(outbox.droppedAt))
		if (people.length > 0) tx.update(outbox).set({ droppedAt: stamp.at }).where(unsent).run()
		erasePersons(tx, people)
		erasePlaces(tx, of)
		eraseProposals(tx, of)
		tx.update(contact).set({ endedAt: stamp.at }).where(eq(contact.clientId, of)).run()
		const blank = { name: erased, studioNote: '', exemptCertificate: null, exemptExpires: null, archivedAt: stamp.at }
		tx.update(client).set(blank).where(eq(client.id, of)).run()
		return { ok: true }
	})
}
