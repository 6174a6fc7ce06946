import type { Moment } from '@/lib/units/day'
import { sideFile } from '../house/side-file'

const hour = 3_600_000
/** A session that nobody used for this long is over. */
const idleMs = { staff: 12 * hour, contact: 14 * 24 * hour } as const

/** When a session was last used, by the hash under which it is kept; to the minute. */
export function lastUse(key: string): Moment | undefined {
	return sideFile().prepare<[string], Moment>('SELECT at FROM activity WHERE session = ?').pluck().get(key)
}

export function noteUse(key: string, at: Moment): void {
	sideFile()
		.prepare('INSERT INTO activity (session, at) VALUES (?, ?) ON CONFLICT (session) DO UPDATE SET at = excluded.at')
		.run(key, at)
}

export const isIdle = (used: Moment, who: keyof typeof idleMs, now: Date): boolean =>
	now.valueOf() - Date.parse(used) > idleMs[who]
