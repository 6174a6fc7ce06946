import { desc, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { standingOf } from '@/lib/agreement/standing'
import type { ClientAgreement } from '@/lib/agreement/studio/shown'
import { dayOf } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import { read } from '../../open'
import { agreement, studio } from '../../schema'
import type { Stamp } from '../../stamp'
import { denied } from '../../viewer'

/** Every agreement with a client, those that are being written too, the newest first. */
export async function clientAgreements(
	viewer: Viewer,
	of: ClientId,
	{ at }: Pick<Stamp, 'at'>,
): Promise<readonly ClientAgreement[]> {
	if (denied(viewer, 'see agreements', of) !== null) return []
	return read((db) =>
		db
			.select({ row: agreement, zone: studio.timeZone })
			.from(agreement)
			.innerJoin(studio, eq(studio.id, 1))
			.where(eq(agreement.clientId, of))
			.orderBy(desc(agreement.createdAt), desc(agreement.id))
			.all()
			.map(({ row, zone }) => ({ id: row.id, state: standingOf(row, dayOf(at, zone)), from: row.from, to: row.to })),
	)
}
