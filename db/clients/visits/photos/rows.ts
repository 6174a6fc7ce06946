import { and, asc, eq, inArray } from 'drizzle-orm'
import { sha256 } from '@/lib/record/hash'
import type { ClientId, PersonId, PhotoId, VisitId } from '@/lib/units/id'
import type { VisitPhoto } from '@/lib/visit/shown'
import type { Reading, Tx } from '../../../open'
import { photo } from '../../../schema'
import type { Stamp } from '../../../stamp'
import type { Placed } from './with-photos'

type Of = { readonly client: ClientId; readonly visit: VisitId; readonly by: PersonId }

/** Adds photos to a visit; the same photo twice on one side is one. @returns how many came to it */
export function addPhotos(tx: Tx, stamp: Stamp, { client, visit, by }: Of, placed: readonly Placed[]): number {
	const there = tx.select().from(photo).where(eq(photo.visitId, visit)).all()
	const known = new Set(there.map(({ side, sha256: hash }) => `${side} ${hash}`))
	let position = Math.max(0, ...there.map((each) => each.position))
	let added = 0
	for (const { id, side, large, width, height } of placed) {
		const hash = sha256(large)
		if (known.has(`${side} ${hash}`)) continue
		known.add(`${side} ${hash}`)
		position += 1
		added += 1
		const of = { id, clientId: client, visitId: visit, side, width, height, sha256: hash, position }
		tx.insert(photo)
			.values({ ...of, addedAt: stamp.at, addedBy: by })
			.run()
	}
	return added
}

/** Takes photos out of a visit, their rows alone; others' are left. @returns those that were in it */
export function dropPhotos(tx: Tx, visit: VisitId, photos: readonly PhotoId[]): PhotoId[] {
	const mine = and(eq(photo.visitId, visit), inArray(photo.id, [...photos]))
	return tx
		.delete(photo)
		.where(mine)
		.returning({ id: photo.id })
		.all()
		.map(({ id }) => id)
}

/** The photos of several visits, each in its order. */
export function photosOf(db: Reading, visits: readonly VisitId[]): (visit: VisitId) => VisitPhoto[] {
	const rows = db
		.select()
		.from(photo)
		.where(inArray(photo.visitId, [...visits]))
		.orderBy(asc(photo.position))
		.all()
	return (visit) =>
		rows.filter(({ visitId }) => visitId === visit).map(({ id, side, width, height }) => ({ id, side, width, height }))
}
