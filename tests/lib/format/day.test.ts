import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { daySpan, days, fullDay, longDay, shortDay } from '@/lib/format/day'
import { addDays, day } from '@/lib/units/day'

describe('a date in words', () => {
	test.each([
		{ date: '2026-10-09', long: 'Friday 9 October', short: 'Fri 9 October', full: '9 October 2026' },
		{ date: '2027-01-01', long: 'Friday 1 January', short: 'Fri 1 January', full: '1 January 2027' },
		{ date: '2028-02-29', long: 'Tuesday 29 February', short: 'Tue 29 February', full: '29 February 2028' },
		{ date: '2026-09-30', long: 'Wednesday 30 September', short: 'Wed 30 September', full: '30 September 2026' },
		{ date: '2026-12-31', long: 'Thursday 31 December', short: 'Thu 31 December', full: '31 December 2026' },
	])('$date', ({ date, long, short, full }) => {
		expect([longDay(day(date)), shortDay(day(date)), fullDay(day(date))]).toEqual([long, short, full])
	})

	test('is the date itself, wherever the machine stands', () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 40_000 }), (count) => {
				const date = addDays(day('1990-01-01'), count)
				expect(new Date(`${fullDay(date)} UTC`).toISOString().slice(0, 10)).toBe(date)
			}),
		)
	})

	test('goes round the week', () => {
		const week = [0, 1, 2, 3, 4, 5, 6, 7].map((count) => shortDay(addDays(day('2026-11-16'), count)).slice(0, 3))
		expect(week).toEqual(['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun', 'Mon'])
	})
})

describe('a span', () => {
	test.each([
		{ name: 'within a month', from: '2026-11-16', to: '2026-11-20', says: '16–\u206020 November' },
		{ name: 'over the end of a month', from: '2026-11-28', to: '2026-12-02', says: '28 November – 2 December' },
		{ name: 'over the new year', from: '2026-12-29', to: '2027-01-04', says: '29 December – 4 January' },
		{ name: 'of a day', from: '2026-05-07', to: '2026-05-07', says: '7 May' },
		{ name: 'a year apart', from: '2026-06-11', to: '2027-06-18', says: '11 June – 18 June' },
	])('$name: $says', ({ from, to, says }) => {
		expect(daySpan(day(from), day(to))).toBe(says)
	})
})

test.each([
	{ count: 0, says: '0 days' },
	{ count: 1, says: '1 day' },
	{ count: 6, says: '6 days' },
])('$says', ({ count, says }) => {
	expect(days(count)).toBe(says)
})
