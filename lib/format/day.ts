import type { Day } from '../units/day'

const asUtc = (date: Day) => new Date(`${date}T00:00:00Z`)
const format = (options: Intl.DateTimeFormatOptions) => {
	const made = new Intl.DateTimeFormat('en-GB', {
		timeZone: 'UTC',
		...options,
	})
	return (date: Day) => made.format(asUtc(date))
}

/** "Friday 9 October" */
export const longDay = format({
	weekday: 'long',
	day: 'numeric',
	month: 'long',
})
/** "Fri 9 October" */
export const shortDay = (date: Day) => `${weekday(date)} ${dayAndMonth(date)}`
/** "9 October 2026" */
export const fullDay = format({
	day: 'numeric',
	month: 'long',
	year: 'numeric',
})
const dayAndMonth = format({ day: 'numeric', month: 'long' })
const dayNumber = format({ day: 'numeric' })
const weekday = format({ weekday: 'short' })

/** Word joiner (Unicode, U+2060): a dash alone would let a line end behind it. */
const noBreak = '\u2060'

/** "16–20 November", "28 November – 2 December" */
export function daySpan(from: Day, to: Day): string {
	if (from === to) return dayAndMonth(from)
	return from.slice(0, 7) === to.slice(0, 7)
		? `${dayNumber(from)}–${noBreak}${dayAndMonth(to)}`
		: `${dayAndMonth(from)} – ${dayAndMonth(to)}`
}

/** "1 day", "6 days" */
export const days = (count: number) => `${count} ${count === 1 ? 'day' : 'days'}`
