import { type Day, daysBetween } from '../../units/day'

/** Days past due, as books are looked through everywhere (common practice, no published source). */
export const bands = ['not due yet', '1 to 30 days', '31 to 60 days', '61 to 90 days', 'over 90 days'] as const
export type Band = (typeof bands)[number]

/** The last day of each band but the last. */
const lastDays = [0, 30, 60, 90]

/** Whole days since the day by which it was to be paid; on that day itself nothing is late. */
export const daysLate = (dueOn: Day, today: Day): number => Math.max(0, daysBetween(dueOn, today))

export function bandOf(dueOn: Day, today: Day): Band {
	const late = daysLate(dueOn, today)
	const at = lastDays.findIndex((last) => late <= last)
	return bands[at === -1 ? lastDays.length : at] ?? 'over 90 days'
}
