import { eq } from 'drizzle-orm'
import type { Reading } from '../open'
import { studio } from '../schema'

/** The time zone of the studio (an IANA name). @throws when there is none yet */
export function timeZoneOf(db: Reading): string {
	const [row] = db.select({ timeZone: studio.timeZone }).from(studio).where(eq(studio.id, 1)).all()
	if (row === undefined) throw new Error('timeZoneOf: there is no studio')
	return row.timeZone
}
