import type { Moment } from '../units/day'

/** "9 October 2026, 14:05", by the clock of the time zone. */
export function momentWords(at: Moment, timeZone: string): string {
	const day = new Intl.DateTimeFormat('en-GB', { timeZone, day: 'numeric', month: 'long', year: 'numeric' })
	const clock = new Intl.DateTimeFormat('en-GB', { timeZone, hour: '2-digit', minute: '2-digit' })
	const date = new Date(at)
	return `${day.format(date)}, ${clock.format(date)}`
}
