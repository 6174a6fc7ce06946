import { lt } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { moment } from '@/lib/units/day'
import { write } from '../open'
import { once } from '../schema'
import type { Stamp } from '../stamp'
import { denied } from '../viewer'

const keptMs = 30 * 86_400_000

/** Keys of forms long gone through: by then the state of the thing itself refuses a second time. */
export async function sweepOnce(viewer: Viewer, { at }: Pick<Stamp, 'at'>): Promise<void> {
	if (denied(viewer, 'keep house', null) !== null) return
	write((tx) =>
		tx
			.delete(once)
			.where(lt(once.at, moment(new Date(Date.parse(at) - keptMs))))
			.run(),
	)
}
