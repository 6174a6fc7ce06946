import type { Brand } from './brand'

/** A calendar date in the studio's time zone, ISO 8601 `yyyy-mm-dd`. */
export type Day = Brand<string, 'Day'>
/** An instant in UTC, ISO 8601 with milliseconds and `Z`; sorts as text. */
export type Moment = Brand<string, 'Moment'>

const dayMs = 86_400_000
const shape = /^\d{4}-\d{2}-\d{2}$/

const asUtc = (text: string) => new Date(`${text}T00:00:00.000Z`)

export function isDay(text: string): text is Day {
	if (!shape.test(text)) return false
	const date = asUtc(text)
	return !Number.isNaN(date.valueOf()) && date.toISOString().startsWith(text)
}

/** @throws when `text` is no date of the calendar, 30 February included */
export function day(text: string): Day {
	if (!isDay(text)) throw new Error(`day: "${text}" is not a calendar date (yyyy-mm-dd)`)
	return text
}

/** @throws when `date` is invalid */
export function moment(date: Date): Moment {
	return date.toISOString() as Moment
}

export function addDays(from: Day, count: number): Day {
	return day(new Date(asUtc(from).valueOf() + count * dayMs).toISOString().slice(0, 10))
}

/** Whole days from `from` to `to`; negative when `to` is earlier. */
export function daysBetween(from: Day, to: Day): number {
	return (asUtc(to).valueOf() - asUtc(from).valueOf()) / dayMs
}

const wallClocks = new Map<string, Intl.DateTimeFormat>()

/** Making one takes longer than asking it a hundred times, so each time zone has one. */
function wallClock(timeZone: string): Intl.DateTimeFormat {
	const known = wallClocks.get(timeZone)
	if (known !== undefined) return known
	const made = new Intl.DateTimeFormat('en-US', {
		timeZone,
		year: 'numeric',
		month: '2-digit',
		day: '2-digit',
		hour: '2-digit',
		hourCycle: 'h23',
	})
	wallClocks.set(timeZone, made)
	return made
}

function shownAt(at: Moment, timeZone: string) {
	const parts = wallClock(timeZone).formatToParts(new Date(at))
	return Object.fromEntries(parts.map(({ type, value }) => [type, value]))
}

/** The date on the wall in `timeZone` (an IANA name) at the instant `at`. */
export function dayOf(at: Moment, timeZone: string): Day {
	const { year, month, day: of } = shownAt(at, timeZone)
	return day(`${year}-${month}-${of}`)
}

/** The hour on the wall clock in `timeZone` (an IANA name) at the instant `at`, 0 to 23. */
export const hourOf = (at: Moment, timeZone: string): number => Number(shownAt(at, timeZone).hour)
