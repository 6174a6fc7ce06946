import { and, eq, inArray } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { ClientId, Id, PlaceId } from '@/lib/units/id'
import { write } from '../open'
import { weighDrafts } from '../proposals/desk/weigh-drafts'
import { append } from '../record/append'
import { place, siteColour } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'
import { isWithUs } from './is-with-us'
import { type ColourFields, insertColours, insertPlace, type PlaceFields } from './places/rows'

export type SavedPlace = { readonly ok: true; readonly id: PlaceId } | Denied

/** A new place of a client, or one of theirs changed. */
export async function savePlace(
	viewer: Viewer,
	of: { client: ClientId; place: PlaceId | null },
	fields: PlaceFields,
	stamp: Stamp,
): Promise<SavedPlace> {
	const no = denied(viewer, 'change clients', of.client)
	if (no !== null) return no
	return write((tx): SavedPlace => {
		if (!isWithUs(tx, of.client)) return hidden
		const id = of.place ?? insertPlace(tx, stamp, of.client, fields)
		const mine = and(eq(place.id, id), eq(place.clientId, of.client))
		if (of.place !== null && tx.update(place).set(fields).where(mine).run().changes === 0) return hidden
		weighDrafts(tx, { client: of.client })
		const act = of.place === null ? 'place added' : 'place changed'
		append(tx, stamp, viewer, { act, object: `place ${id}`, client: of.client })
		return { ok: true, id }
	})
}

/** Colours of the building, seen by eye or in a photo. */
export async function addSiteColours(
	viewer: Viewer,
	of: { client: ClientId; place: PlaceId },
	colours: readonly ColourFields[],
	stamp: Stamp,
): Promise<{ readonly ok: true } | Denied> {
	const no = denied(viewer, 'change clients', of.client)
	if (no !== null) return no
	return write((tx) => {
		const mine = and(eq(place.id, of.place), eq(place.clientId, of.client))
		if (!isWithUs(tx, of.client) || tx.select().from(place).where(mine).all().length === 0) return hidden
		insertColours(tx, stamp, of.place, colours)
		append(tx, stamp, viewer, { act: 'place changed', object: `place ${of.place}`, client: of.client })
		return { ok: true as const }
	})
}

/** A colour that is not the building's after all. */
export async function dropSiteColour(
	viewer: Viewer,
	of: { client: ClientId; colour: Id<'site colour'> },
	stamp: Stamp,
): Promise<{ readonly ok: true } | Denied> {
	const no = denied(viewer, 'change clients', of.client)
	if (no !== null) return no
	return write((tx) => {
		if (!isWithUs(tx, of.client)) return hidden
		const places = tx.select({ id: place.id }).from(place).where(eq(place.clientId, of.client))
		const gone = tx
			.delete(siteColour)
			.where(and(eq(siteColour.id, of.colour), inArray(siteColour.placeId, places)))
			.returning({ place: siteColour.placeId })
			.all()
		const [found] = gone
		if (found === undefined) return hidden
		append(tx, stamp, viewer, { act: 'place changed', object: `place ${found.place}`, client: of.client })
		return { ok: true as const }
	})
}
