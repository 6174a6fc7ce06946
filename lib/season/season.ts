export const quarters = ['spring', 'summer', 'autumn', 'winter'] as const
export type Quarter = (typeof quarters)[number]

/** A quarter of a year; winter is named by both years that it touches, and kept by the one in which it begins. */
export type Season = { readonly quarter: Quarter; readonly year: number }

/** "winter 2026–27", "spring 2027" */
export function seasonName({ quarter, year }: Season): string {
	return quarter === 'winter' ? `winter ${year}–${String((year + 1) % 100).padStart(2, '0')}` : `${quarter} ${year}`
}
