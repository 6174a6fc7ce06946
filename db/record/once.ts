import type { Viewer } from '@/lib/access/viewer'
import type { Id } from '@/lib/units/id'
import type { Tx } from '../open'
import { once } from '../schema'
import type { Stamp } from '../stamp'
import { actorOf } from '../viewer'

/** @returns false when a form with this key has gone through before: nothing may be changed a second time */
export function isFirst(tx: Tx, stamp: Stamp, viewer: Viewer, key: Id<'once'>): boolean {
	return (
		tx
			.insert(once)
			.values({ key, actor: actorOf(viewer), at: stamp.at })
			.onConflictDoNothing()
			.run().changes === 1
	)
}
