import { and, desc, eq, isNotNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { AgreementLine } from '@/lib/agreement/signing/page'
import { standingOf } from '@/lib/agreement/standing'
import { dayOf } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import { read } from '../open'
import { agreement, client, studio } from '../schema'
import type { Stamp } from '../stamp'
import { denied, visibleTo } from '../viewer'

/** The agreements that were ever issued to a client, the newest first. */
export async function agreementsOf(
	viewer: Viewer,
	of: ClientId,
	{ at }: Pick<Stamp, 'at'>,
): Promise<readonly AgreementLine[]> {
	if (denied(viewer, 'see the agreement', of) !== null) return []
	return read((db) => {
		const rows = db
			.select({ row: agreement, zone: studio.timeZone })
			.from(agreement)
			.innerJoin(client, eq(client.id, agreement.clientId))
			.innerJoin(studio, eq(studio.id, 1))
			.where(and(eq(agreement.clientId, of), visibleTo(viewer, agreement.clientId), isNotNull(agreement.issued)))
			.orderBy(desc(agreement.from), desc(agreement.id))
			.all()
		return rows.flatMap(({ row, zone }): AgreementLine[] => {
			const { id, from, to, signBy } = row
			if (from === null || to === null || signBy === null) return []
			return [{ agreement: id, state: standingOf(row, dayOf(at, zone)), from, to, signBy }]
		})
	})
}
