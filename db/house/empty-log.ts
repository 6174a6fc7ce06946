import type { Viewer } from '@/lib/access/viewer'
import { denied } from '../viewer'

/**
 * Brings the write-ahead log into the file and empties it: what was erased is then nowhere in either.
 * @returns false when it has to wait, since something is being written
 */
export async function emptyLog(viewer: Viewer): Promise<boolean | undefined> {
	if (denied(viewer, 'keep house', null) !== null) return undefined
	const sqlite = globalThis.doorsillDatabase?.sqlite
	if (sqlite === undefined || sqlite.inTransaction) return false
	sqlite.pragma('wal_checkpoint(TRUNCATE)')
	return true
}
