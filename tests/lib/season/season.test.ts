import { expect, test } from 'vitest'
import { quarters, seasonName } from '@/lib/season/season'

test.each([
	{ quarter: 'spring', year: 2027, says: 'spring 2027' },
	{ quarter: 'summer', year: 2028, says: 'summer 2028' },
	{ quarter: 'autumn', year: 2026, says: 'autumn 2026' },
	{ quarter: 'winter', year: 2026, says: 'winter 2026–27' },
	{ quarter: 'winter', year: 2099, says: 'winter 2099–00' },
	{ quarter: 'winter', year: 2008, says: 'winter 2008–09' },
] as const)('$says', ({ quarter, year, says }) => {
	expect(seasonName({ quarter, year })).toBe(says)
})

test('a year has four, in the order in which they come', () => {
	expect(quarters).toEqual(['spring', 'summer', 'autumn', 'winter'])
})
