import { describe, expect, test } from 'vitest'
import { seasonMonths, usualInstallMonth } from '@/lib/recipe/almanac/months'

// Meteorological seasons, as weather services count them (denver.cbslocal.com, 1 December 2017; University of Georgia
// Extension, climate, December 2020).
test.each([
	{ quarter: 'spring', months: [3, 4, 5] },
	{ quarter: 'summer', months: [6, 7, 8] },
	{ quarter: 'autumn', months: [9, 10, 11] },
	{ quarter: 'winter', months: [12, 1, 2] },
] as const)('$quarter: $months', ({ quarter, months }) => {
	expect(seasonMonths(quarter)).toEqual(months)
})

// startribune.com: cut greens go in before Thanksgiving, for the soil may be set like concrete after it.
describe('winter goes in', () => {
	test('in November', () => {
		expect(usualInstallMonth('winter')).toBe(11)
	})
})
