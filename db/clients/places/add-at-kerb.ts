import { and, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { ClientId, PlaceId } from '@/lib/units/id'
import { type Tx, write } from '../../open'
import { append } from '../../record/append'
import { place } from '../../schema'
import type { Stamp } from '../../stamp'
import { type Denied, denied, hidden } from '../../viewer'
import { isWithUs } from '../is-with-us'
import {
	type ColourFields,
	type ContainerFields,
	insertColours,
	insertContainer,
	insertPlace,
	type PlaceFields,
} from './rows'

export type AtKerb = {
	readonly client: ClientId
	/** One that they have, or a new one. */
	readonly place: PlaceId | PlaceFields
	readonly containers: readonly ContainerFields[]
	readonly colours: readonly ColourFields[]
}
export type Added = { readonly ok: true; readonly place: PlaceId } | Denied

/** A place of theirs, looked up or made; undefined where it is not theirs. */
function placeIn(tx: Tx, stamp: Stamp, client: ClientId, of: AtKerb['place']): PlaceId | undefined {
	if (typeof of !== 'string') return insertPlace(tx, stamp, client, of)
	const mine = and(eq(place.id, of), eq(place.clientId, client))
	return tx.select({ id: place.id }).from(place).where(mine).all()[0]?.id
}

/** What was written down in one go: all of it or nothing, and once only. */
export async function addAtKerb(
	viewer: Viewer,
	{ client, place: where, containers, colours }: AtKerb,
	stamp: Stamp,
): Promise<Added> {
	const no = denied(viewer, 'change clients', client)
	if (no !== null) return no
	return write((tx): Added => {
		const at = isWithUs(tx, client) ? placeIn(tx, stamp, client, where) : undefined
		if (at === undefined) return hidden
		const act = typeof where === 'string' ? 'place changed' : 'place added'
		append(tx, stamp, viewer, { act, object: `place ${at}`, client })
		const { once: _, ...unkeyed } = stamp
		insertColours(tx, unkeyed, at, colours)
		for (const fields of containers) {
			const id = insertContainer(tx, unkeyed, at, fields)
			append(tx, unkeyed, viewer, { act: 'container added', object: `container ${id}`, client })
		}
		return { ok: true, place: at }
	})
}
