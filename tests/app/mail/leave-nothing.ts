import { stranger } from '../../db/stage/studio'

/** Ticks off every mail that waits. */
export const leaveNothing = (folder: string): void =>
	stranger(folder, (sqlite) => {
		sqlite.exec('UPDATE outbox SET sent_at = created_at WHERE sent_at IS NULL AND dropped_at IS NULL')
	})
