import { and, eq, isNull } from 'drizzle-orm'
import type { ClientId, PersonId } from '@/lib/units/id'
import type { Reading } from '../open'
import { contact, staff } from '../schema'

/** Contacts of a client who are to hear of it. */
export function contactsOf(db: Reading, of: ClientId, { whoMayApprove = false } = {}): PersonId[] {
	const rows = db
		.select({ person: contact.personId, may: contact.may })
		.from(contact)
		.where(and(eq(contact.clientId, of), isNull(contact.endedAt)))
		.all()
	return rows.filter(({ may }) => !whoMayApprove || may === 'approve').map(({ person }) => person)
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
