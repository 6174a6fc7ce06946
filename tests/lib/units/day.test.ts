import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { addDays, type Day, day, dayOf, daysBetween, isDay, moment } from '@/lib/units/day'

/** The Gregorian rule, worked without a date library: the judge of the calendar. */
const isLeap = (year: number) => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
const monthDays = (year: number) => [31, isLeap(year) ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
const two = (value: number) => String(value).padStart(2, '0')
const written = (year: number, month: number, date: number) =>
	`${String(year).padStart(4, '0')}-${two(month)}-${two(date)}`

/** Days since 1 January 1600, counted year by year and month by month. */
function ordinal(text: string): number {
	const [year = 0, month = 0, date = 0] = text.split('-').map(Number)
	let count = date - 1
	for (let y = 1600; y < year; y += 1) count += isLeap(y) ? 366 : 365
	for (const length of monthDays(year).slice(0, month - 1)) count += length
	return count
}

const dates: fc.Arbitrary<Day> = fc
	.record({ year: fc.integer({ min: 1600, max: 2400 }), month: fc.integer({ min: 1, max: 12 }), at: fc.nat() })
	.map(({ year, month, at }) => day(written(year, month, 1 + (at % (monthDays(year)[month - 1] ?? 28)))))

describe('a date of the calendar', () => {
	test.each([
		{ name: 'a leap day', text: '2028-02-29' },
		{ name: 'a leap day of a year by four hundred', text: '2000-02-29' },
		{ name: 'the last of the year', text: '2026-12-31' },
		{ name: 'the first of a month', text: '2026-11-01' },
	])('$name: $text', ({ text }) => {
		expect(day(text)).toBe(text)
	})

	test.each([
		{ name: '29 February of a common year', text: '2027-02-29' },
		{ name: '29 February of a common century', text: '1900-02-29' },
		{ name: '30 February', text: '2028-02-30' },
		{ name: '31 November', text: '2026-11-31' },
		{ name: 'a thirteenth month', text: '2026-13-04' },
		{ name: 'a month of nothing', text: '2026-00-17' },
		{ name: 'a day of nothing', text: '2026-05-00' },
		{ name: 'American order', text: '11-20-2026' },
		{ name: 'no leading nought', text: '2026-9-04' },
		{ name: 'a time with it', text: '2026-11-20T00:00:00Z' },
		{ name: 'a line end after it', text: '2026-11-21\n' },
		{ name: 'a space before it', text: ' 2026-11-22' },
		{ name: 'Arabic digits', text: '٢٠٢٦-١١-٢٣' },
		{ name: 'a year of five figures', text: '+12026-11-24' },
		{ name: 'nothing', text: '' },
	])('is not $name', ({ text }) => {
		expect(isDay(text)).toBe(false)
		expect(() => day(text)).toThrow('is not a calendar date (yyyy-mm-dd)')
	})

	test('is one exactly when the Gregorian rule has it, for every month and day of twelve hundred years', () => {
		const part = (max: number) => fc.integer({ min: 0, max })
		fc.assert(
			fc.property(fc.integer({ min: 1000, max: 2200 }), part(14), part(33), (year, month, date) => {
				const longest = monthDays(year)[month - 1] ?? 0
				expect(isDay(written(year, month, date))).toBe(date >= 1 && date <= longest)
			}),
			{ numRuns: 2000 },
		)
	})
})

describe('adding days', () => {
	test.each([
		{ name: 'over the end of a month', from: '2026-11-28', count: 4, to: '2026-12-02' },
		{ name: 'over the new year', from: '2026-12-30', count: 3, to: '2027-01-02' },
		{ name: 'over a leap day', from: '2028-02-27', count: 5, to: '2028-03-03' },
		{ name: 'over a February of 28', from: '2027-02-27', count: 6, to: '2027-03-05' },
		{ name: 'back over a month', from: '2026-05-01', count: -1, to: '2026-04-30' },
		{ name: 'over the night when clocks go forward', from: '2026-03-07', count: 2, to: '2026-03-09' },
		{ name: 'none', from: '2026-10-09', count: 0, to: '2026-10-09' },
	])('$name: $from and $count is $to', ({ from, count, to }) => {
		expect(addDays(day(from), count)).toBe(to)
		expect(daysBetween(day(from), day(to))).toBe(count)
	})

	test('and counting them are each other’s way back', () => {
		fc.assert(
			fc.property(dates, fc.integer({ min: -80_000, max: 80_000 }), (from, count) => {
				const to = addDays(from, count)
				expect(daysBetween(from, to)).toBe(count)
				expect(addDays(to, -count)).toBe(from)
			}),
			{ numRuns: 500 },
		)
	})

	test('counts as the calendar does, year by year and month by month', () => {
		fc.assert(
			fc.property(dates, dates, (from, to) => {
				expect(daysBetween(from, to)).toBe(ordinal(to) - ordinal(from))
				expect(daysBetween(to, from)).toBe(ordinal(from) - ordinal(to))
			}),
			{ numRuns: 500 },
		)
	})

	test('sorts as text', () => {
		fc.assert(fc.property(dates, dates, (a, b) => a < b === daysBetween(a, b) > 0))
	})
})

describe('a moment', () => {
	test('is written in UTC, to the millisecond', () => {
		expect(moment(new Date(Date.UTC(2026, 10, 3, 14, 5, 9, 7)))).toBe('2026-11-03T14:05:09.007Z')
	})

	test('that does not exist is refused', () => {
		expect(() => moment(new Date(Number.NaN))).toThrow('Invalid time value')
	})
})

const dayAt = (at: string, zone: string) => dayOf(moment(new Date(at)), zone)

// IANA time zone database. United States since 2007: clocks go on at 2:00 on the second Sunday of March, back at 2:00
// on the first Sunday of November. European Union: both at 01:00 UTC, on the last Sundays of March and October.
describe('the date on the wall', () => {
	test.each([
		{
			name: 'five hours behind, a minute to midnight',
			at: '2026-11-18T04:59:59.999Z',
			zone: 'America/New_York',
			is: 17,
		},
		{ name: 'five hours behind, midnight', at: '2026-11-18T05:00:00Z', zone: 'America/New_York', is: 18 },
		{ name: 'four hours behind in summer', at: '2026-07-21T03:59:59Z', zone: 'America/New_York', is: 20 },
		{ name: 'and past midnight', at: '2026-07-21T04:00:00Z', zone: 'America/New_York', is: 21 },
		{ name: 'the eve of clocks going on', at: '2026-03-08T04:59:00Z', zone: 'America/New_York', is: 7 },
		{
			name: 'the day of clocks going on begins in winter time',
			at: '2026-03-08T05:00:00Z',
			zone: 'America/New_York',
			is: 8,
		},
		{ name: 'and ends an hour early', at: '2026-03-09T03:59:59Z', zone: 'America/New_York', is: 8 },
		{ name: 'at 04:00 UTC', at: '2026-03-09T04:00:00Z', zone: 'America/New_York', is: 9 },
		{
			name: 'the day of clocks going back begins in summer time',
			at: '2026-11-01T04:00:00Z',
			zone: 'America/New_York',
			is: 1,
		},
		{ name: 'and ends an hour late', at: '2026-11-02T04:59:59Z', zone: 'America/New_York', is: 1 },
		{ name: 'London, the night of clocks going on', at: '2026-03-28T23:59:59Z', zone: 'Europe/London', is: 28 },
		{ name: 'London, the night after it', at: '2026-03-29T23:00:00Z', zone: 'Europe/London', is: 30 },
		{ name: 'half an hour off the hour', at: '2026-10-04T18:30:00Z', zone: 'Asia/Kolkata', is: 5 },
		{ name: 'fourteen hours ahead', at: '2026-10-14T10:00:00Z', zone: 'Pacific/Kiritimati', is: 15 },
		{ name: 'eleven hours behind', at: '2026-10-25T10:59:59Z', zone: 'Pacific/Pago_Pago', is: 24 },
		{ name: 'no clock change', at: '2026-12-31T06:59:00Z', zone: 'America/Phoenix', is: 30 },
	])('$name: $at in $zone is the $is.', ({ at, zone, is }) => {
		expect(Number(dayAt(at, zone).slice(8))).toBe(is)
	})

	test('over the end of a year and over a leap day', () => {
		expect(dayAt('2027-01-01T04:30:00Z', 'America/New_York')).toBe('2026-12-31')
		expect(dayAt('2028-02-29T01:10:00Z', 'America/New_York')).toBe('2028-02-28')
		expect(dayAt('2028-02-28T20:10:00Z', 'Asia/Tokyo')).toBe('2028-02-29')
	})

	// POSIX signs: Etc/GMT+5 is five hours behind Greenwich.
	test('in a zone without clock changes is the instant moved by the offset', () => {
		const drawn = fc.record({
			ms: fc.integer({ min: Date.UTC(1975, 0, 1), max: Date.UTC(2100, 0, 1) }),
			behind: fc.integer({ min: -14, max: 12 }),
		})
		fc.assert(
			fc.property(drawn, ({ ms, behind }) => {
				const zone = `Etc/GMT${behind < 0 ? behind : `+${behind}`}`
				const there = new Date(ms - behind * 3_600_000).toISOString().slice(0, 10)
				expect(dayOf(moment(new Date(ms)), zone)).toBe(there)
			}),
			{ numRuns: 400 },
		)
	})

	test('goes on by one, never back and never twice, whatever the clocks do', () => {
		for (const zone of ['America/New_York', 'Europe/London', 'Australia/Lord_Howe']) {
			const seen: Day[] = []
			for (let hour = 0; hour < 366 * 24; hour += 3) {
				const at = dayOf(moment(new Date(Date.UTC(2026, 0, 2) + hour * 3_600_000)), zone)
				if (seen.at(-1) !== at) seen.push(at)
			}
			const steps = seen.slice(1).map((at, n) => daysBetween(seen[n] ?? at, at))
			expect(new Set(steps)).toEqual(new Set([1]))
		}
	})

	test('in a zone that nobody knows is refused', () => {
		expect(() => dayAt('2026-11-18T12:00:00Z', 'Europe/Nowhere')).toThrow(RangeError)
	})
})
