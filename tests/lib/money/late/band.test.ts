import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bandOf, bands, daysLate } from '@/lib/money/late/band'
import { addDays, day, dayOf, moment } from '@/lib/units/day'

const dueOn = day('2026-10-20')

describe('how late', () => {
	test.each([
		[-12, 'not due yet', 0],
		[0, 'not due yet', 0],
		[1, '1 to 30 days', 1],
		[30, '1 to 30 days', 30],
		[31, '31 to 60 days', 31],
		[60, '31 to 60 days', 60],
		[61, '61 to 90 days', 61],
		[90, '61 to 90 days', 90],
		[91, 'over 90 days', 91],
		[800, 'over 90 days', 800],
	] as const)('%i days after its day: %s', (after, band, late) => {
		const today = addDays(dueOn, after)
		expect([bandOf(dueOn, today), daysLate(dueOn, today)]).toEqual([band, late])
	})

	test('over a change of the clocks and a leap day, by the calendar of the studio', () => {
		const midnight = moment(new Date('2028-03-12T04:59:00Z'))
		expect(daysLate(day('2028-02-11'), dayOf(midnight, 'America/New_York'))).toBe(29)
		expect(daysLate(day('2028-02-11'), dayOf(midnight, 'Europe/Paris'))).toBe(30)
		expect(daysLate(day('2027-02-11'), day('2027-03-12'))).toBe(29)
	})

	test('never falls as days go by', () => {
		fc.assert(
			fc.property(fc.nat(200), fc.nat(200), (a, b) => {
				const at = (after: number) => bands.indexOf(bandOf(dueOn, addDays(dueOn, after - 20)))
				expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)))
			}),
		)
	})
})
