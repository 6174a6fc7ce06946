import { and, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { ClientId, ContainerId, PlaceId } from '@/lib/units/id'
import { write } from '../open'
import { weighDrafts } from '../proposals/desk/weigh-drafts'
import { append } from '../record/append'
import { container, place } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'
import { isWithUs } from './is-with-us'
import { type ContainerFields, insertContainer } from './places/rows'

export type SavedContainer = { readonly ok: true; readonly id: ContainerId } | Denied
type Where = { readonly client: ClientId; readonly place: PlaceId; readonly container: ContainerId | null }

/** A new container at a place, or one that stands there changed. Measures in cm. */
export async function saveContainer(
	viewer: Viewer,
	of: Where,
	fields: ContainerFields,
	stamp: Stamp,
): Promise<SavedContainer> {
	const no = denied(viewer, 'change clients', of.client)
	if (no !== null) return no
	return write((tx): SavedContainer => {
		const here = and(eq(place.id, of.place), eq(place.clientId, of.client))
		if (!isWithUs(tx, of.client) || tx.select().from(place).where(here).all().length === 0) return hidden
		const id = of.container ?? insertContainer(tx, stamp, of.place, fields)
		const mine = and(eq(container.id, id), eq(container.placeId, of.place))
		if (of.container !== null && tx.update(container).set(fields).where(mine).run().changes === 0) return hidden
		weighDrafts(tx, { client: of.client })
		const act = of.container === null ? 'container added' : 'container changed'
		append(tx, stamp, viewer, { act, object: `container ${id}`, client: of.client })
		return { ok: true, id }
	})
}
