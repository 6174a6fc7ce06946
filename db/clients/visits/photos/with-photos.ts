import { inArray } from 'drizzle-orm'
import type { PhotoId } from '@/lib/units/id'
import type { PhotoSide } from '@/lib/visit/visit'
import { read } from '../../../open'
import { photo } from '../../../schema'
import type { Stamp } from '../../../stamp'
import { removePhotos, writePhoto } from './files'

/** A photo made ready to be kept: upright, sized, without what the camera wrote beside it. */
export type Incoming = {
	readonly side: Extract<PhotoSide, 'before' | 'after' | 'wrong'>
	readonly large: Uint8Array
	readonly small: Uint8Array
	/** Of the larger. */
	readonly width: number
	readonly height: number
}
export type Placed = Incoming & { readonly id: PhotoId }

function withoutRow(ids: readonly PhotoId[]): PhotoId[] {
	const rows = read((db) =>
		db
			.select({ id: photo.id })
			.from(photo)
			.where(inArray(photo.id, [...ids]))
			.all(),
	)
	const kept = new Set(rows.map(({ id }) => id))
	return ids.filter((id) => !kept.has(id))
}

/** Files first, then the rows that name them: a row never names a file that is not there. Files that got no row go again. */
export function withPhotos<T>(incoming: readonly Incoming[], stamp: Stamp, run: (placed: readonly Placed[]) => T): T {
	const placed = incoming.map((each) => ({ ...each, id: stamp.id<'photo'>() }))
	try {
		for (const each of placed) writePhoto(each.id, each)
		return run(placed)
	} finally {
		if (placed.length > 0) removePhotos(withoutRow(placed.map(({ id }) => id)))
	}
}
