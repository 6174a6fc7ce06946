import { and, eq, isNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { PersonId } from '@/lib/units/id'
import { write } from '../open'
import { append } from '../record/append'
import { contact, person, staff } from '../schema'
import { insertPerson } from '../sign-in/insert-person'
import type { Stamp } from '../stamp'
import { type Denied, denied } from '../viewer'

export type Hire = { readonly name: string; readonly address: string; readonly role: 'designer' | 'helper' }
export type Hired =
	| { readonly ok: true; readonly person: PersonId }
	| { readonly ok: false; readonly why: 'works here already' | 'is a contact of a client' }
	| Denied

/** Lets a person in at the studio's door. One who left may come back. Nobody stands on both sides of it: a client's contact is refused. */
export async function hireStaff(viewer: Viewer, { name, address, role }: Hire, stamp: Stamp): Promise<Hired> {
	const no = denied(viewer, 'change settings', null)
	if (no !== null) return no
	return write((tx): Hired => {
		const [known] = tx.select({ id: person.id }).from(person).where(eq(person.email, address)).all()
		const id = known?.id ?? stamp.id<'person'>()
		if (tx.select().from(contact).where(eq(contact.personId, id)).all().length > 0)
			return { ok: false, why: 'is a contact of a client' }
		const here = and(eq(staff.personId, id), isNull(staff.endedAt))
		if (tx.select().from(staff).where(here).all().length > 0) return { ok: false, why: 'works here already' }
		if (known === undefined) insertPerson(tx, stamp, { id, name, address })
		const again = { role, since: stamp.at, endedAt: null }
		tx.insert(staff)
			.values({ personId: id, ...again })
			.onConflictDoUpdate({ target: staff.personId, set: again })
			.run()
		append(tx, stamp, viewer, { act: 'staff hired', object: `person ${id}`, client: null, facts: { role } })
		return { ok: true, person: id }
	})
}
