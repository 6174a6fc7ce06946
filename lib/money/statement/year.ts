import { type Day, day } from '../../units/day'
import type { Span } from './statement'

const written = (year: number) => String(year).padStart(4, '0')

/** A calendar year as the days from and to, both in it. @throws when it is none of four digits */
export const yearSpan = (year: number): Span => ({
	from: day(`${written(year)}-01-01`),
	to: day(`${written(year)}-12-31`),
})

/** The years that a ledger touches, the first to that of `today`, so that each has a statement. */
export function yearsOf(days: readonly Day[], today: Day): number[] {
	const of = (each: Day) => Number(each.slice(0, 4))
	const last = of(today)
	const first = Math.min(last, ...days.map(of))
	return Array.from({ length: last - first + 1 }, (_, index) => first + index)
}
