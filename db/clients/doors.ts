import { and, eq, isNull } from 'drizzle-orm'
import type { ClientId, PersonId } from '@/lib/units/id'
import type { Tx } from '../open'
import { contact, staff } from '../schema'

/** Whether somebody may come in at a client's door. */
export const hasOpenDoor = (tx: Tx, of: ClientId, who: PersonId): boolean =>
	tx
		.select({ id: contact.id })
		.from(contact)
		.where(and(eq(contact.clientId, of), eq(contact.personId, who), isNull(contact.endedAt)))
		.all().length > 0

/** Whether somebody works at the studio, or did. */
export const isOfStudio = (tx: Tx, who: PersonId): boolean =>
	tx.select().from(staff).where(eq(staff.personId, who)).all().length > 0
