import { and, eq, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { LengthUnit } from '@/lib/format/length'
import { prepared, read, type Tx, write } from '../open'
import { append } from '../record/append'
import { person, revision, studio } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied } from '../viewer'

export type Settings = {
	readonly name: string
	readonly timeZone: string
	readonly currency: string
	readonly lengths: LengthUnit
}

const named = prepared((db) => db.select({ name: studio.name }).from(studio).where(eq(studio.id, 1)).prepare())
const personKnown = prepared((db) =>
	db
		.select({ name: person.name, address: person.email })
		.from(person)
		.where(eq(person.id, sql.placeholder('id')))
		.prepare(),
)

/** What everybody may know of the studio: its name stands on every page. */
export async function studioName(_viewer: Viewer): Promise<string | undefined> {
	return read((db) => named(db).all())[0]?.name
}

export async function readSettings(viewer: Viewer): Promise<Settings | undefined> {
	if (denied(viewer, 'see the studio', null) !== null) return undefined
	const [row] = read((db) => db.select().from(studio).where(eq(studio.id, 1)).all())
	return row && { name: row.name, timeZone: row.timeZone, currency: row.currency, lengths: row.lengths }
}

/** Amounts that are out are cents of the currency in which they were published. */
function wouldRename(tx: Tx, { currency }: Settings): boolean {
	const same = and(eq(studio.id, 1), eq(studio.currency, currency))
	if (tx.select({ id: studio.id }).from(studio).where(same).all().length === 1) return false
	return tx.select({ id: revision.id }).from(revision).limit(1).all().length > 0
}

export type SavedSettings = { readonly ok: true } | { readonly ok: false; readonly why: 'prices stand' } | Denied

/** The currency can be changed until the first revision is published. */
export async function saveSettings(viewer: Viewer, next: Settings, stamp: Stamp): Promise<SavedSettings> {
	const no = denied(viewer, 'change settings', null)
	if (no !== null) return no
	return write((tx): SavedSettings => {
		if (wouldRename(tx, next)) return { ok: false, why: 'prices stand' }
		tx.update(studio).set(next).where(eq(studio.id, 1)).run()
		append(tx, stamp, viewer, { act: 'settings changed', object: 'studio', client: null })
		return { ok: true }
	})
}

/** Name and address of whoever is signed in, for the head of their own pages. */
export async function whoIs(viewer: Viewer): Promise<{ name: string; address: string } | undefined> {
	if (viewer.is !== 'staff' && viewer.is !== 'contact') return undefined
	return read((db) => personKnown(db).all({ id: viewer.person }))[0]
}
