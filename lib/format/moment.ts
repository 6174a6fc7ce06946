import type { Moment } from '../units/day'

/** "9 October 2026, 14:05", by the clock of the time zone. */
export function momentWords(at: Moment, timeZone: string): string {
	const day = new Intl.DateTimeFormat('en-GB', { timeZone, day: 'numeric', month: 'long', year: 'numeric' })
	const clock = new Intl.DateTimeFormat('en-GB', { timeZone, hour: '2-digit', minute: '2-digit' })
	const date = new Date(at)
	return `${day.format(date)}, ${clock.format(date)}`
}

/** "2026-10-09 18:05:30 UTC (9 October 2026, 14:05 in America/New York)" */
export const bothClocks = (at: Moment, timeZone: string): string =>
	`${at.slice(0, 10)} ${at.slice(11, 19)} UTC (${momentWords(at, timeZone)} in ${timeZone.replaceAll('_', ' ')})`
