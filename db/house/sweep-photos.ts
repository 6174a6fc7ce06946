import type { Viewer } from '@/lib/access/viewer'
import { photosOnDisk, removePhotos } from '../clients/visits/photos/files'
import { read } from '../open'
import { photo } from '../schema'
import { denied } from '../viewer'

/**
 * Files that no row names, as a crash between files and row leaves them. Both are written in one turn of this process,
 * so that none which is on its way is taken for one that was left.
 */
export async function sweepPhotos(viewer: Viewer): Promise<number> {
	if (denied(viewer, 'keep house', null) !== null) return 0
	const kept = new Set(read((db) => db.select({ id: photo.id }).from(photo).all()).map(({ id }) => id))
	const left = photosOnDisk().filter((id) => !kept.has(id))
	removePhotos(left)
	return left.length
}
