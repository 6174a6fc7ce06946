import { and, eq, inArray } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { blended } from '@/lib/colour/site/blended'
import type { ClientId, Id } from '@/lib/units/id'
import { type Tx, write } from '../open'
import { append } from '../record/append'
import { place, siteColour } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'
import { isWithUs } from './is-with-us'

type Colour = typeof siteColour.$inferSelect
export type Renamed = { readonly ok: true } | Denied
export type Merged = Renamed | { readonly ok: false; readonly why: 'not two of one place' }

/** Those of the client alone. */
function colourOf(tx: Tx, of: ClientId, id: Id<'site colour'>): Colour | undefined {
	const places = tx.select({ id: place.id }).from(place).where(eq(place.clientId, of))
	const mine = and(eq(siteColour.id, id), inArray(siteColour.placeId, places))
	return tx.select().from(siteColour).where(mine).all()[0]
}

/** Another name for a colour of the building. */
export async function renameSiteColour(
	viewer: Viewer,
	of: { client: ClientId; colour: Id<'site colour'>; name: string },
	stamp: Stamp,
): Promise<Renamed> {
	const no = denied(viewer, 'change clients', of.client)
	if (no !== null) return no
	return write((tx): Renamed => {
		const found = isWithUs(tx, of.client) ? colourOf(tx, of.client, of.colour) : undefined
		if (found === undefined) return hidden
		tx.update(siteColour).set({ name: of.name }).where(eq(siteColour.id, found.id)).run()
		append(tx, stamp, viewer, { act: 'place changed', object: `place ${found.placeId}`, client: of.client })
		return { ok: true }
	})
}

/** Two colours of one place that are one after all: the first keeps its name and its spot, and the second goes. */
export async function mergeSiteColours(
	viewer: Viewer,
	of: { client: ClientId; colour: Id<'site colour'>; other: Id<'site colour'> },
	stamp: Stamp,
): Promise<Merged> {
	const no = denied(viewer, 'change clients', of.client)
	if (no !== null) return no
	return write((tx): Merged => {
		if (!isWithUs(tx, of.client)) return hidden
		const [one, other] = [colourOf(tx, of.client, of.colour), colourOf(tx, of.client, of.other)]
		if (one === undefined || other === undefined) return hidden
		if (one.id === other.id || one.placeId !== other.placeId) return { ok: false, why: 'not two of one place' }
		tx.update(siteColour)
			.set({ hex: blended(one, other) })
			.where(eq(siteColour.id, one.id))
			.run()
		tx.delete(siteColour).where(eq(siteColour.id, other.id)).run()
		append(tx, stamp, viewer, { act: 'place changed', object: `place ${one.placeId}`, client: of.client })
		return { ok: true }
	})
}
