import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { dayOf } from '@/lib/units/day'
import { read, write } from '../open'
import { append } from '../record/append'
import { studio } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'
import { billsFrom } from './bills/begun'

/** Where and how to pay, as the studio says it on its invoices. */
export async function readPayWords(viewer: Viewer): Promise<string | undefined> {
	if (denied(viewer, 'see the studio', null) !== null) return undefined
	return read((db) => db.select({ words: studio.payWords }).from(studio).where(eq(studio.id, 1)).all())[0]?.words
}

/** The first time that it says so, the studio begins to ask for what is due by itself: the record tells since when. */
export async function savePayWords(
	viewer: Viewer,
	words: string,
	stamp: Stamp,
): Promise<{ readonly ok: true } | Denied> {
	const no = denied(viewer, 'change settings', null)
	if (no !== null) return no
	return write((tx) => {
		const [house] = tx.select().from(studio).where(eq(studio.id, 1)).all()
		if (house === undefined) return hidden
		tx.update(studio).set({ payWords: words }).where(eq(studio.id, 1)).run()
		const begins = words !== '' && billsFrom(tx) === null
		const facts = begins ? { billsFrom: dayOf(stamp.at, house.timeZone) } : {}
		append(tx, stamp, viewer, { act: 'settings changed', object: 'studio', client: null, facts })
		return { ok: true }
	})
}
