import { and, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { PhotoId } from '@/lib/units/id'
import type { PhotoSize } from '@/lib/visit/photo'
import { read } from '../../../open'
import { photo } from '../../../schema'
import { denied, visibleTo } from '../../../viewer'
import { readPhoto } from './files'

/** The bytes of a photo, a JPEG; undefined when there is none, or none that the viewer may see. */
export async function photoFile(
	viewer: Viewer,
	id: PhotoId,
	size: PhotoSize,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
	const [found] = read((db) =>
		db
			.select({ client: photo.clientId })
			.from(photo)
			.where(and(eq(photo.id, id), visibleTo(viewer, photo.clientId)))
			.all(),
	)
	if (found === undefined || denied(viewer, 'see a photo', found.client) !== null) return undefined
	return readPhoto(id, size)
}
