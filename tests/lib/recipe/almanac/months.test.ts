import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { monthName, seasonMonths, standingMonths, usualInstallMonth } from '@/lib/recipe/almanac/months'
import { quarters } from '@/lib/season/season'

describe('the months of a season', () => {
	test.each([
		{
			name: 'winter goes in in November, before the soil freezes',
			quarter: 'winter',
			month: 11,
			stands: [11, 12, 1, 2],
		},
		{ name: 'winter in a mild October', quarter: 'winter', month: 10, stands: [10, 11, 12, 1, 2] },
		{ name: 'a late winter', quarter: 'winter', month: 1, stands: [1, 2] },
		{ name: 'spring after the thaw', quarter: 'spring', month: 4, stands: [4, 5] },
		{ name: 'summer in May', quarter: 'summer', month: 5, stands: [5, 6, 7, 8] },
		{ name: 'a month that is not near it', quarter: 'autumn', month: 3, stands: [9, 10, 11] },
	] as const)('$name', ({ quarter, month, stands }) => {
		expect(standingMonths(quarter, month)).toEqual(stands)
	})

	test('the usual month to go in', () => {
		expect(quarters.map(usualInstallMonth)).toEqual([3, 6, 9, 11])
	})

	test('whatever the month, a season stands to its end and never twice through one', () => {
		fc.assert(
			fc.property(fc.constantFrom(...quarters), fc.integer({ min: 1, max: 12 }), (quarter, month) => {
				const months = standingMonths(quarter, month)
				expect(months.at(-1)).toBe(seasonMonths(quarter).at(-1))
				expect(new Set(months).size).toBe(months.length)
				for (const each of months) expect(monthName(each)).toMatch(/^[A-Z][a-z]+$/)
			}),
		)
	})
})
