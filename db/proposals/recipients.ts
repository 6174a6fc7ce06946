import { and, asc, eq, isNull } from 'drizzle-orm'
import { mayOf } from '@/lib/access/viewer'
import type { Recipient } from '@/lib/proposal/desk/publish-words'
import type { ClientId, PersonId } from '@/lib/units/id'
import type { Reading } from '../open'
import { contact, person, staff } from '../schema'

/** Contacts of a client who are to hear of it: all, those who may approve, or those who see what is owed. */
export function contactsOf(db: Reading, of: ClientId, { whoMayApprove = false, whoSeeMoney = false } = {}): PersonId[] {
	const rows = db
		.select({ person: contact.personId, may: contact.may, seesMoney: contact.seesMoney })
		.from(contact)
		.where(and(eq(contact.clientId, of), isNull(contact.endedAt)))
		.all()
	return rows
		.filter(({ may }) => !whoMayApprove || may === 'approve')
		.filter((row) => !whoSeeMoney || mayOf(row) !== 'look')
		.map(({ person }) => person)
}

/** The same by name, for the designer. */
export function recipientsOf(db: Reading, of: ClientId): Recipient[] {
	return db
		.select({ name: person.name, may: contact.may })
		.from(contact)
		.innerJoin(person, eq(person.id, contact.personId))
		.where(and(eq(contact.clientId, of), isNull(contact.endedAt)))
		.orderBy(asc(person.name))
		.all()
}

export function designers(db: Reading): PersonId[] {
	const who = and(eq(staff.role, 'designer'), isNull(staff.endedAt))
	return db
		.select({ person: staff.personId })
		.from(staff)
		.where(who)
		.all()
		.map(({ person }) => person)
}
