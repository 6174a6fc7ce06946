import { asc, eq, isNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { PersonId } from '@/lib/units/id'
import { read, write } from '../open'
import { append } from '../record/append'
import { person, staff } from '../schema'
import { shutOut } from '../sign-in/shut-out'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'

export type Member = {
	readonly id: PersonId
	readonly name: string
	readonly address: string
	readonly role: 'designer' | 'helper'
	readonly isMe: boolean
}

/** Whoever may come in at the studio's door, the longest there first. */
export async function listStaff(viewer: Viewer): Promise<Member[]> {
	if (denied(viewer, 'see the studio', null) !== null || viewer.is !== 'staff') return []
	const rows = read((db) =>
		db
			.select({ id: person.id, name: person.name, address: person.email, role: staff.role })
			.from(staff)
			.innerJoin(person, eq(person.id, staff.personId))
			.where(isNull(staff.endedAt))
			.orderBy(asc(staff.since), asc(person.name))
			.all(),
	)
	return rows.map((row) => ({ ...row, isMe: row.id === viewer.person }))
}

export type StaffEnded = { readonly ok: true } | { readonly ok: false; readonly why: 'that is you' } | Denied

/** Closes the studio's door to a member: every session and link of theirs ends at once. Nobody shuts themselves out. */
export async function endStaff(viewer: Viewer, id: PersonId, stamp: Stamp): Promise<StaffEnded> {
	const no = denied(viewer, 'change settings', null)
	if (no !== null) return no
	if (viewer.is === 'staff' && viewer.person === id) return { ok: false, why: 'that is you' }
	return write((tx): StaffEnded => {
		const theirs = eq(staff.personId, id)
		const [found] = tx.select({ endedAt: staff.endedAt }).from(staff).where(theirs).all()
		if (found === undefined) return hidden
		if (found.endedAt !== null) return { ok: true }
		tx.update(staff).set({ endedAt: stamp.at }).where(theirs).run()
		shutOut(tx, id, stamp)
		append(tx, stamp, viewer, { act: 'staff left', object: `person ${id}`, client: null })
		return { ok: true }
	})
}
