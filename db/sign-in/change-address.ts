import { and, eq, isNull } from 'drizzle-orm'
import type { Taken } from '@/lib/access/taken-words'
import type { Viewer } from '@/lib/access/viewer'
import type { ClientId, Id } from '@/lib/units/id'
import { hasOpenDoor, isOfStudio } from '../clients/doors'
import { isWithUs } from '../clients/is-with-us'
import { type Tx, write } from '../open'
import { enqueue } from '../outbox/enqueue'
import { append } from '../record/append'
import { contact, person } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'
import { shutOut } from './shut-out'

export type NewAddress = { readonly client: ClientId; readonly contact: Id<'contact'>; readonly address: string }

/** Somebody has the address. */
export type AddressTaken = Taken & { readonly ok: false; readonly why: 'taken' }
export type AddressChanged = { readonly ok: true } | AddressTaken | Denied

type Holder = Pick<typeof person.$inferSelect, 'id' | 'name' | 'email'>

/** Behind the client's door. */
function holderOf(tx: Tx, { client: of, contact: id }: NewAddress): Holder | undefined {
	return tx
		.select({ id: person.id, name: person.name, email: person.email })
		.from(contact)
		.innerJoin(person, eq(person.id, contact.personId))
		.where(and(eq(contact.id, id), eq(contact.clientId, of), isNull(contact.endedAt)))
		.all()[0]
}

function takenBy(tx: Tx, whose: Holder, { client: of, address }: NewAddress): AddressTaken | undefined {
	const [found] = tx.select().from(person).where(eq(person.email, address)).all()
	if (found === undefined) return undefined
	const taken = { ok: false, why: 'taken', by: found.name } as const
	if (found.id === whose.id) return { ...taken, who: 'themselves' }
	if (isOfStudio(tx, found.id)) return { ...taken, who: 'staff' }
	return { ...taken, who: hasOpenDoor(tx, of, found.id) ? 'a contact here' : 'somebody else' }
}

/**
 * A contact has another mail address from now on, at every door of theirs. Whatever would let them in ends, links in old
 * mails stand for nobody, and the old address is told.
 */
export async function changeAddress(viewer: Viewer, change: NewAddress, stamp: Stamp): Promise<AddressChanged> {
	const { client: of, address } = change
	const no = denied(viewer, 'change clients', of)
	if (no !== null) return no
	return write((tx): AddressChanged => {
		const whose = isWithUs(tx, of) ? holderOf(tx, change) : undefined
		if (whose === undefined) return hidden
		const taken = takenBy(tx, whose, change)
		if (taken !== undefined) return taken
		shutOut(tx, whose.id, stamp)
		const handle = Buffer.from(stamp.salt()).toString('base64url')
		tx.update(person).set({ email: address, emailVerified: null, handle }).where(eq(person.id, whose.id)).run()
		append(tx, stamp, viewer, { act: 'address changed', object: `person ${whose.id}`, client: of })
		const facts = { at: stamp.at, address: whose.email }
		enqueue(tx, stamp, { message: 'address changed', person: whose.id, facts })
		return { ok: true }
	})
}
