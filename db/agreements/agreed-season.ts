import { and, desc, eq, gte, isNotNull } from 'drizzle-orm'
import type { Draft } from '@/lib/proposal/draft'
import type { Season } from '@/lib/season/season'
import type { Day } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import type { Reading } from '../open'
import { agreement } from '../schema'
import { documentIn } from './documents'

type Asked = Season & { readonly windowFrom: Day }

/** The price that an agreement which both have signed fixes for a client's season, as a draft has it; none where it is quoted. */
export function agreedFor(db: Reading, client: ClientId, { quarter, year, windowFrom }: Asked): Draft['agreement'] {
	const holding = and(
		eq(agreement.clientId, client),
		isNotNull(agreement.inForce),
		gte(agreement.holdsUntil, windowFrom),
	)
	const fixed = db
		.select({ inForce: agreement.inForce })
		.from(agreement)
		.where(holding)
		.orderBy(desc(agreement.from), desc(agreement.id))
		.all()
		.flatMap(({ inForce }) => (inForce === null ? [] : (documentIn(db, inForce)?.seasons ?? [])))
		.find((season) => season.quarter === quarter && season.year === year && season.price.is === 'fixed')
	if (fixed === undefined || fixed.price.is !== 'fixed') return { is: 'none' }
	return { is: 'fixed', cents: fixed.price.cents, containers: fixed.containers }
}
