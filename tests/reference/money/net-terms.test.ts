import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dueDay } from '@/lib/money/invoice/invoice'
import { bandOf } from '@/lib/money/late/band'
import { addDays, type Day, day } from '@/lib/units/day'

// Net terms: whole calendar days after the day from which they are counted, that day not in them. Common practice, no
// published source; the days were counted on a calendar by hand.
const net = [
	{ from: '2026-11-20', netDays: 15, due: '2026-12-05' },
	{ from: '2026-11-20', netDays: 30, due: '2026-12-20' },
	{ from: '2026-12-16', netDays: 15, due: '2026-12-31' },
	{ from: '2026-12-17', netDays: 15, due: '2027-01-01' },
	{ from: '2027-01-31', netDays: 30, due: '2027-03-02' },
	{ from: '2028-01-31', netDays: 30, due: '2028-03-01' },
	{ from: '2028-02-14', netDays: 15, due: '2028-02-29' },
	{ from: '2100-02-14', netDays: 15, due: '2100-03-01' },
	{ from: '2026-11-20', netDays: 0, due: '2026-11-20' },
] as const

describe('net days', () => {
	test.each(net)('net $netDays from $from is $due', ({ from, netDays, due }) => {
		expect(dueDay(day(from), { from: day(from), netDays })).toBe(due)
	})

	/** The next day by the calendar's own rules (leap years: Gregorian, by 4, not by 100, by 400), not by any clock. */
	function tomorrow(date: Day): Day {
		const [year = 0, month = 0, of = 0] = date.split('-').map(Number)
		const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
		const lengths = [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
		const two = (n: number) => String(n).padStart(2, '0')
		if (of < (lengths[month - 1] ?? 0)) return day(`${year}-${two(month)}-${two(of + 1)}`)
		return month < 12 ? day(`${year}-${two(month + 1)}-01`) : day(`${year + 1}-01-01`)
	}

	test('as counted one day after the other on the calendar', () => {
		fc.assert(
			fc.property(fc.nat(146_000), fc.nat(60), (after, netDays) => {
				const from = addDays(day('2000-01-01'), after)
				let counted = from
				for (let n = 0; n < netDays; n += 1) counted = tomorrow(counted)
				expect(dueDay(from, { from, netDays })).toBe(counted)
			}),
			{ numRuns: 500 },
		)
	})
})

// Ages of what is open: 1 to 30, 31 to 60, 61 to 90 and over 90 days past due. Common practice, no published source.
test('an invoice of net 30 grows old by the calendar', () => {
	const due = dueDay(day('2026-11-20'), { from: day('2026-11-20'), netDays: 30 })
	const aged = [
		'2026-12-20',
		'2026-12-21',
		'2027-01-19',
		'2027-01-20',
		'2027-02-18',
		'2027-02-19',
		'2027-03-20',
		'2027-03-21',
	]
	expect(aged.map((today) => bandOf(due, day(today)))).toEqual([
		...['not due yet', '1 to 30 days', '1 to 30 days', '31 to 60 days', '31 to 60 days', '61 to 90 days'],
		...['61 to 90 days', 'over 90 days'],
	])
})
