import { type Day, day } from '../../units/day'

const isLeap = (year: number) => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0

/** `month` counts from 0. */
function daysIn(year: number, month: number): number {
	if (month === 1) return isLeap(year) ? 29 : 28
	return month === 3 || month === 5 || month === 8 || month === 10 ? 30 : 31
}

const padded = (value: number, digits: number) => String(value).padStart(digits, '0')

/**
 * The same day `count` months on, or the last of that month where it has no such day. Count from the start and not
 * from the last: 31 January, 28 February, 31 March.
 */
export function addMonths(from: Day, count: number): Day {
	const [year = 0, month = 1, of = 1] = from.split('-').map(Number)
	const months = year * 12 + month - 1 + count
	const [toYear, toMonth] = [Math.floor(months / 12), ((months % 12) + 12) % 12]
	return day(`${padded(toYear, 4)}-${padded(toMonth + 1, 2)}-${padded(Math.min(of, daysIn(toYear, toMonth)), 2)}`)
}

/** The first of a month that is `from` or the next after it. */
export const firstOfMonth = (from: Day): Day => {
	const first = day(`${from.slice(0, 8)}01`)
	return first === from ? from : addMonths(first, 1)
}
