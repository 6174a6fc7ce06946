import { and, eq, isNull } from 'drizzle-orm'
import type { Hash } from '@/lib/record/hash'
import type { PersonId } from '@/lib/units/id'
import { type Tx, write } from '../open'
import { enqueue } from '../outbox/enqueue'
import { contact, person, staff } from '../schema'
import type { Stamp } from '../stamp'

export type Asked = { readonly address: string; readonly askHash: Hash; readonly to: string }

/** Whose address it is, when a door of the studio or of a client is open to them. */
function whoMayEnter(tx: Tx, address: string): PersonId | null {
	const [found] = tx
		.select({ id: person.id, member: staff.personId, contact: contact.id })
		.from(person)
		.leftJoin(staff, and(eq(staff.personId, person.id), isNull(staff.endedAt)))
		.leftJoin(contact, and(eq(contact.personId, person.id), isNull(contact.endedAt)))
		.where(eq(person.email, address))
		.limit(1)
		.all()
	return found === undefined || (found.member === null && found.contact === null) ? null : found.id
}

/**
 * Someone asked for a link. The same rows are read and the same row is written whether or not the address is known
 * here, so that neither the answer nor its time tells.
 */
export async function askForLink({ address, askHash, to }: Asked, stamp: Stamp): Promise<void> {
	write((tx) => {
		enqueue(tx, stamp, { message: 'sign-in link', person: whoMayEnter(tx, address), facts: { askHash, to } })
	})
}

/** The address behind the handle of a mailed link; undefined for one that stands for nobody. */
export async function addressOfHandle(handle: string): Promise<string | undefined> {
	return write((tx) => tx.select({ email: person.email }).from(person).where(eq(person.handle, handle)).all())[0]?.email
}
