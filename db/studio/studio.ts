import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { LengthUnit } from '@/lib/format/length'
import { read, write } from '../open'
import { append } from '../record/append'
import { person, studio } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied } from '../viewer'

export type Settings = {
	readonly name: string
	readonly timeZone: string
	readonly currency: string
	readonly lengths: LengthUnit
}

/** What everybody may know of the studio: its name stands on every page. */
export async function studioName(_viewer: Viewer): Promise<string | undefined> {
	return read((db) => db.select({ name: studio.name }).from(studio).where(eq(studio.id, 1)).all())[0]?.name
}

export async function readSettings(viewer: Viewer): Promise<Settings | undefined> {
	if (denied(viewer, 'see the studio', null) !== null) return undefined
	const [row] = read((db) => db.select().from(studio).where(eq(studio.id, 1)).all())
	return row && { name: row.name, timeZone: row.timeZone, currency: row.currency, lengths: row.lengths }
}

export async function saveSettings(
	viewer: Viewer,
	next: Settings,
	stamp: Stamp,
): Promise<{ readonly ok: true } | Denied> {
	const no = denied(viewer, 'change settings', null)
	if (no !== null) return no
	write((tx) => {
		tx.update(studio).set(next).where(eq(studio.id, 1)).run()
		append(tx, stamp, viewer, { act: 'settings changed', object: 'studio', client: null })
	})
	return { ok: true }
}

/** Name and address of whoever is signed in, for the head of their own pages. */
export async function whoIs(viewer: Viewer): Promise<{ name: string; address: string } | undefined> {
	if (viewer.is !== 'staff' && viewer.is !== 'contact') return undefined
	const own = eq(person.id, viewer.person)
	return read((db) => db.select({ name: person.name, address: person.email }).from(person).where(own).all())[0]
}
