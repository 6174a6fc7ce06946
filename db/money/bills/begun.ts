import { and, asc, eq, sql } from 'drizzle-orm'
import { z } from 'zod'
import type { Day } from '@/lib/units/day'
import { daySchema } from '@/lib/units/schema'
import type { Reading } from '../../open'
import { event } from '../../schema'

/**
 * Since when bills are asked for by themselves: the day on which the studio first said how it is paid, as the record
 * tells it; null before. What came to be owed earlier may have been asked for on paper, so it is asked for by hand alone.
 */
export function billsFrom(db: Reading): Day | null {
	const said = and(eq(event.act, 'settings changed'), sql`json_extract(${event.facts}, '$.billsFrom') IS NOT NULL`)
	const [first] = db.select({ facts: event.facts }).from(event).where(said).orderBy(asc(event.seq)).limit(1).all()
	return first === undefined ? null : z.object({ billsFrom: daySchema }).parse(JSON.parse(first.facts)).billsFrom
}
