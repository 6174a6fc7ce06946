import { DateTime } from 'luxon'
import { expect, test } from 'vitest'
import { addMonths, firstOfMonth } from '@/lib/agreement/instalment/months'
import { addDays, type Day, day } from '@/lib/units/day'

// luxon (an independent calendar library) as the judge, over the 400 years after which the Gregorian calendar repeats.
const judged = (from: Day, months: number) => DateTime.fromISO(from, { zone: 'utc' }).plus({ months }).toISODate()

const monthEnds: readonly Day[] = Array.from({ length: 400 * 12 }, (_, index) => {
	const next = `${1900 + Math.floor((index + 1) / 12)}-${String(((index + 1) % 12) + 1).padStart(2, '0')}-01`
	return addDays(day(next), -1)
})
const steps = [1, 2, 3, 5, 6, 11, 12, 13, 48, -1, -12]

test('400 years of month-ends, as the other library counts them', () => {
	expect(monthEnds.slice(0, 3)).toEqual(['1900-01-31', '1900-02-28', '1900-03-31'])
	expect(new Set(monthEnds).size).toBe(4800)
	const wrong = monthEnds.flatMap((from) =>
		steps.flatMap((months) =>
			addMonths(from, months) === judged(from, months) ? [] : [`${from} + ${months}: ${addMonths(from, months)}`],
		),
	)
	expect(wrong).toEqual([])
})

test('the days before a month-end, where some months have them and others not', () => {
	const wrong = monthEnds
		.flatMap((end) => [addDays(end, -1), addDays(end, -2), addDays(end, 1)])
		.filter((from) => addMonths(from, 1) !== judged(from, 1))
	expect(wrong).toEqual([])
})

test('a year of month-ends from 31 January, counted from the start', () => {
	const counted = (from: string) => Array.from({ length: 5 }, (_, months) => addMonths(day(from), months))
	expect(counted('2027-01-31')).toEqual(['2027-01-31', '2027-02-28', '2027-03-31', '2027-04-30', '2027-05-31'])
	expect(counted('2028-01-31')).toEqual(['2028-01-31', '2028-02-29', '2028-03-31', '2028-04-30', '2028-05-31'])
})

test('the first of a month, on the day or after it', () => {
	const judge = (from: Day) => {
		const at = DateTime.fromISO(from, { zone: 'utc' })
		return (at.day === 1 ? at : at.plus({ months: 1 }).startOf('month')).toISODate()
	}
	const wrong = monthEnds
		.flatMap((end) => [end, addDays(end, 1), addDays(end, 2)])
		.filter((of) => firstOfMonth(of) !== judge(of))
	expect(wrong).toEqual([])
})
