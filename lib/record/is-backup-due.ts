import type { Moment } from '../units/day'

const mostHours = 20
const hourMs = 3_600_000

/** True when the newest copy is more than twenty hours old, or from a time to come, which a wrong clock wrote; looked at every hour. */
export function isBackupDue(newest: Moment | null, now: Moment): boolean {
	return newest === null || Math.abs(Date.parse(now) - Date.parse(newest)) > mostHours * hourMs
}
