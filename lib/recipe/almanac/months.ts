import type { Quarter, Season } from '../../season/season'
import { type Day, day } from '../../units/day'
import type { Month } from '../traits'

/** The meteorological seasons of the northern half of the world, as weather services count them. */
const months: Record<Quarter, readonly [Month, Month, Month]> = {
	spring: [3, 4, 5],
	summer: [6, 7, 8],
	autumn: [9, 10, 11],
	winter: [12, 1, 2],
}

/** The day on which the three months of the next season begin. */
export function seasonEnd({ quarter, year }: Season): Day {
	const month = (months[quarter][2] % 12) + 1
	return day(`${quarter === 'winter' ? year + 1 : year}-${String(month).padStart(2, '0')}-01`)
}

export const seasonMonths = (quarter: Quarter): readonly Month[] => months[quarter]

/**
 * The month in which a season goes in where no window says so: its first, but November for winter, since cut greens
 * have to stand in soil that is not frozen yet (common practice).
 */
export const usualInstallMonth = (quarter: Quarter): Month => (quarter === 'winter' ? 11 : months[quarter][0])

const before = (month: Month, by: number): Month => ((month + 11 - by) % 12) + 1

/**
 * The months through which a season stands: from its install to the end of its three. An install up to two months
 * early lengthens it, one inside it shortens it; any other month is passed over.
 */
export function standingMonths(quarter: Quarter, installed: Month): readonly Month[] {
	const [first] = months[quarter]
	const whole = [before(first, 2), before(first, 1), ...months[quarter]]
	const at = whole.indexOf(installed)
	return at === -1 ? months[quarter] : whole.slice(at)
}

const names = [
	'January',
	'February',
	'March',
	'April',
	'May',
	'June',
	'July',
	'August',
	'September',
	'October',
	'November',
	'December',
]

export const monthName = (month: Month): string => names[month - 1] ?? `month ${month}`
