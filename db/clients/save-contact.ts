import { and, eq } from 'drizzle-orm'
import type { Taken } from '@/lib/access/taken-words'
import { keptMay, type May, type Viewer } from '@/lib/access/viewer'
import type { ClientId, Id, PersonId } from '@/lib/units/id'
import { type Tx, write } from '../open'
import { enqueue } from '../outbox/enqueue'
import { append } from '../record/append'
import { contact, person, proposal } from '../schema'
import { insertPerson } from '../sign-in/insert-person'
import { shutOut } from '../sign-in/shut-out'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'
import { hasOpenDoor, isOfStudio } from './doors'
import { isWithUs } from './is-with-us'

export type Invitation = {
	readonly client: ClientId
	readonly name: string
	readonly address: string
	readonly may: May
}
export type Invited =
	| { readonly ok: true; readonly person: PersonId; readonly contact: Id<'contact'> }
	| (Taken & { readonly ok: false; readonly why: 'taken' })
	| Denied

type Person = { readonly id: PersonId; readonly name: string }

/** Whoever has the address already, else a new person. */
function personWith(tx: Tx, { name, address }: Invitation, stamp: Stamp): Person {
	const [known] = tx.select({ id: person.id, name: person.name }).from(person).where(eq(person.email, address)).all()
	if (known !== undefined) return known
	const id = stamp.id<'person'>()
	insertPerson(tx, stamp, { id, name, address })
	return { id, name }
}

/** Whoever comes in while a proposal waits is told of it as the others were when it was published. */
function tellOfWaiting(tx: Tx, stamp: Stamp, of: ClientId, who: PersonId): void {
	const waiting = and(eq(proposal.clientId, of), eq(proposal.state, 'waiting for an answer'))
	for (const { id, revisionNumber: number } of tx.select().from(proposal).where(waiting).all())
		enqueue(tx, stamp, { message: 'proposal published', person: who, facts: { proposal: id, number } })
}

/**
 * Lets a person in at a client's door, to approve, to look or to look at money too, with a mail of what waits there; one who was inside gets
 * the new right. Somebody else with the same address at the same door is refused.
 */
export async function inviteContact(viewer: Viewer, invitation: Invitation, stamp: Stamp): Promise<Invited> {
	const { client: of, may } = invitation
	const no = denied(viewer, 'change clients', of)
	if (no !== null) return no
	return write((tx): Invited => {
		if (!isWithUs(tx, of)) return hidden
		const { id, name: by } = personWith(tx, invitation, stamp)
		const taken = { ok: false, why: 'taken', by } as const
		if (isOfStudio(tx, id)) return { ...taken, who: 'staff' }
		const isInside = hasOpenDoor(tx, of, id)
		if (isInside && by !== invitation.name) return { ...taken, who: 'a contact here' }
		const kept = keptMay(may)
		const door = tx
			.insert(contact)
			.values({ id: stamp.id<'contact'>(), clientId: of, personId: id, since: stamp.at, ...kept })
			.onConflictDoUpdate({ target: [contact.clientId, contact.personId], set: { endedAt: null, ...kept } })
			.returning({ id: contact.id })
			.get()
		append(tx, stamp, viewer, { act: 'contact invited', object: `person ${id}`, client: of, facts: { may } })
		if (!isInside) tellOfWaiting(tx, stamp, of, id)
		return { ok: true, person: id, contact: door.id }
	})
}

/** Closes the door to a contact: every session and link of theirs ends at once. */
export async function endContact(
	viewer: Viewer,
	{ client: of, contact: id }: { client: ClientId; contact: Id<'contact'> },
	stamp: Stamp,
): Promise<{ readonly ok: true } | Denied> {
	const no = denied(viewer, 'change clients', of)
	if (no !== null) return no
	return write((tx) => {
		const mine = and(eq(contact.id, id), eq(contact.clientId, of))
		const [found] = tx.select({ person: contact.personId }).from(contact).where(mine).all()
		if (found === undefined) return hidden
		tx.update(contact).set({ endedAt: stamp.at }).where(mine).run()
		shutOut(tx, found.person, stamp)
		append(tx, stamp, viewer, {
			act: 'contact changed',
			object: `person ${found.person}`,
			client: of,
			facts: { may: 'nothing' },
		})
		return { ok: true as const }
	})
}
