import { count, eq, max } from 'drizzle-orm'
import type { Spot } from '@/lib/colour/site/photo'
import type { Hex } from '@/lib/units/hex'
import type { ClientId, ContainerId, PlaceId } from '@/lib/units/id'
import type { Tx } from '../../open'
import { container, place, siteColour } from '../../schema'
import type { Stamp } from '../../stamp'

export type PlaceFields = Omit<typeof place.$inferInsert, 'id' | 'clientId' | 'position'>
/** Measures in cm. */
export type ContainerFields = Omit<typeof container.$inferInsert, 'id' | 'placeId' | 'position' | 'retiredAt'>
export type ColourFields = {
	readonly name: string
	readonly hex: Hex
	readonly side: 'inside' | 'outside'
	/** Where in a photo it was found; null of one that was added by eye. */
	readonly spot?: Spot | null
}

/** A new place of a client, after those that they have. */
export function insertPlace(tx: Tx, stamp: Stamp, clientId: ClientId, fields: PlaceFields): PlaceId {
	const id = stamp.id<'place'>()
	const [there] = tx.select({ n: count() }).from(place).where(eq(place.clientId, clientId)).all()
	tx.insert(place)
		.values({ id, clientId, position: there?.n ?? 0, ...fields })
		.run()
	return id
}

/** A new container at a place, after those that stand there. */
export function insertContainer(tx: Tx, stamp: Stamp, placeId: PlaceId, fields: ContainerFields): ContainerId {
	const id = stamp.id<'container'>()
	const [there] = tx.select({ n: count() }).from(container).where(eq(container.placeId, placeId)).all()
	tx.insert(container)
		.values({ id, placeId, position: there?.n ?? 0, ...fields })
		.run()
	return id
}

/** More colours of a place, after those that it has. */
export function insertColours(tx: Tx, stamp: Stamp, placeId: PlaceId, colours: readonly ColourFields[]): void {
	const here = eq(siteColour.placeId, placeId)
	const [there] = tx
		.select({ last: max(siteColour.position) })
		.from(siteColour)
		.where(here)
		.all()
	const first = (there?.last ?? -1) + 1
	for (const [index, { spot = null, ...fields }] of colours.entries())
		tx.insert(siteColour)
			.values({
				id: stamp.id<'site colour'>(),
				placeId,
				position: first + index,
				...fields,
				spotX: spot?.x ?? null,
				spotY: spot?.y ?? null,
			})
			.run()
}
