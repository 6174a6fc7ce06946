import { and, asc, eq, gte, isNotNull, isNull, ne } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { AgreementDocument } from '@/lib/agreement/document/document'
import type { Season } from '@/lib/season/season'
import type { Day } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import { newVisit } from '../clients/visits/new-visit'
import type { Tx } from '../open'
import { append } from '../record/append'
import { agreement, client, season, visit } from '../schema'
import type { Stamp } from '../stamp'
import { documentIn } from './documents'

type Signed = Pick<AgreementDocument, 'seasons'> & { readonly client: ClientId }

/**
 * The visits that a signed agreement includes, to be planned, in every season that the studio has planned; as many of a
 * kind as are there already are not put there a second time. A season that is planned later gets its own then.
 */
export function planVisitsIn(tx: Tx, stamp: Stamp, viewer: Viewer, { client, seasons }: Signed): number {
	let count = 0
	for (const { quarter, year, visits } of seasons) {
		const [planned] = tx
			.select({ id: season.id })
			.from(season)
			.where(and(eq(season.quarter, quarter), eq(season.year, year)))
			.all()
		if (planned === undefined) continue
		for (const { kind, count: agreed } of visits) {
			const same = and(eq(visit.clientId, client), eq(visit.seasonId, planned.id), eq(visit.kind, kind))
			const there = tx
				.select({ id: visit.id })
				.from(visit)
				.where(and(same, ne(visit.state, 'dropped')))
				.all().length
			for (let missing = agreed - there; missing > 0; missing -= 1) {
				const row = newVisit(tx, stamp, { client, season: planned.id })
				if (row === undefined) break
				tx.insert(visit)
					.values({ ...row, kind })
					.run()
				append(tx, stamp, viewer, { act: 'visit planned', object: `visit ${row.id}`, client, facts: { kind } })
				count += 1
			}
		}
	}
	return count
}

/** The visits of a season that is planned now, for each agreement that both signed before and that holds until then. */
export function planAgreedVisitsIn(
	tx: Tx,
	stamp: Stamp,
	viewer: Viewer,
	{ quarter, year, windowFrom }: Season & { readonly windowFrom: Day },
): void {
	const holding = and(isNotNull(agreement.inForce), gte(agreement.holdsUntil, windowFrom), isNull(client.archivedAt))
	const rows = tx
		.select({ client: client.id, inForce: agreement.inForce })
		.from(agreement)
		.innerJoin(client, eq(client.id, agreement.clientId))
		.where(holding)
		.orderBy(asc(agreement.from), asc(agreement.id))
		.all()
	for (const { client: of, inForce } of rows) {
		const agreed = inForce === null ? [] : (documentIn(tx, inForce)?.seasons ?? [])
		const seasons = agreed.filter((each) => each.quarter === quarter && each.year === year)
		planVisitsIn(tx, stamp, viewer, { client: of, seasons })
	}
}
