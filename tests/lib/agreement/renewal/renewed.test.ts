import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { makeDocument } from '@/lib/agreement/document/make'
import { addMonths } from '@/lib/agreement/instalment/months'
import type { Plan } from '@/lib/agreement/instalment/plan'
import { aYearOn } from '@/lib/agreement/renewal/a-year-on'
import { type Renewal, renewed } from '@/lib/agreement/renewal/renewed'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import { termsSchema } from '@/lib/agreement/terms'
import { cents } from '@/lib/units/cents'
import { addDays, day, daysBetween } from '@/lib/units/day'
import { firstIssue } from '../document/issued'
import { anyPlan, anySeasons, facts, spring, terms } from '../sample'

const byFour: Renewal = { rise: { is: 'percent', percent: 4 }, stepCents: 500, adjusted: [] }

describe('four per cent, rounded to five', () => {
	test('old and new side by side', () => {
		const { seasons, total } = renewed(terms, byFour)
		expect(seasons).toEqual([
			{ season: { quarter: 'winter', year: 2027 }, was: 61_250, is: 63_500, difference: 2250 },
			{ season: { quarter: 'spring', year: 2028 }, was: 38_401, is: 40_000, difference: 1599 },
			{ season: { quarter: 'summer', year: 2028 }, was: null, is: null, difference: null },
		])
		expect(total).toEqual({ was: 99_651, is: 103_500, difference: 3849 })
	})

	test('one season adjusted: as it was typed, not rounded', () => {
		const adjusted = [{ season: { quarter: 'spring', year: 2028 } as const, cents: cents(39_999) }]
		const { seasons, total } = renewed(terms, { ...byFour, adjusted })
		expect(seasons.map(({ is }) => is)).toEqual([63_500, 39_999, null])
		expect(total.is).toBe(103_499)
	})

	test('an adjustment of another year’s spring, or of a quoted season, adjusts nothing', () => {
		const adjusted = [
			{ season: spring, cents: cents(1) },
			{ season: { quarter: 'summer', year: 2028 } as const, cents: cents(2) },
		]
		expect(renewed(terms, { ...byFour, adjusted })).toEqual(renewed(terms, byFour))
	})

	test('can be issued as it is, and the year that it came from is left alone', () => {
		const before = structuredClone(terms)
		const made = makeDocument(renewed(terms, byFour).terms, facts, defaultTemplate, firstIssue)
		expect(made.ok && made.document.totalCents).toBe(103_500)
		expect(made.ok && made.document.instalments.map(({ due }) => due.is === 'on' && due.day)).toEqual([
			...['2027-12-01', '2028-03-01', '2028-06-01', '2028-09-01'],
		])
		expect(terms).toEqual(before)
	})

	test('a price that falls to nothing is not issued', () => {
		const { terms: next } = renewed(terms, { ...byFour, rise: { is: 'amount', cents: cents(-38_401) } })
		const made = makeDocument(next, facts, defaultTemplate, firstIssue)
		expect(made.ok ? [] : made.problems.map(({ says }) => says)).toEqual([
			'The price of spring 2028 is not above zero.',
		])
	})
})

describe('a year on', () => {
	const moved = (from: string, to: string) => {
		const next = aYearOn({ ...terms, from: day(from), to: day(to) })
		return [next.from, next.to]
	}
	test.each([
		['2026-12-01', '2027-11-30', '2027-12-01', '2028-11-30'],
		['2026-03-01', '2027-02-28', '2027-03-01', '2028-02-29'],
		['2027-03-01', '2028-02-29', '2028-03-01', '2029-02-28'],
		['2028-02-29', '2029-02-27', '2029-02-28', '2030-02-27'],
		['2027-01-31', '2027-05-31', '2028-01-31', '2028-05-31'],
	])('from %s to %s: from %s to %s', (from, to, nextFrom, nextTo) => {
		expect(moved(from, to)).toEqual([nextFrom, nextTo])
	})

	test('a whole year is followed by a whole year, without a gap and without a day twice', () => {
		const anyDay = fc.integer({ min: 0, max: 40_000 }).map((days) => addDays(day('2000-01-01'), days))
		fc.assert(
			fc.property(anyDay, (from) => {
				const to = addDays(addMonths(from, 12), -1)
				const next = aYearOn({ ...terms, from, to })
				expect(next.from).toBe(addDays(to, 1))
				expect([364, 365]).toContain(daysBetween(next.from ?? from, next.to ?? to))
			}),
		)
	})

	test('what is open stays open', () => {
		const open = { ...terms, from: null, to: null, plan: null, said: { ...terms.said, lightsDownBy: null } }
		expect(aYearOn(open)).toMatchObject({ from: null, to: null, plan: null, said: { lightsDownBy: null } })
	})

	test('the day of the lights and each date of a plan', () => {
		const plan: Plan = {
			is: 'own dates',
			parts: [
				{ weight: 1, due: { is: 'on', day: day('2028-02-29') } },
				{ weight: 2, due: { is: 'at visit', season: { quarter: 'winter', year: 2026 }, visit: 'install', number: 1 } },
				{ weight: 3, due: { is: 'on approval', monthsLater: 2 } },
			],
		}
		expect(aYearOn({ ...terms, plan })).toMatchObject({
			said: { lightsDownBy: '2028-02-15' },
			plan: {
				parts: [
					{ due: { day: '2029-02-28' } },
					{ due: { season: { quarter: 'winter', year: 2027 } } },
					{ due: { monthsLater: 2 } },
				],
			},
		})
		const first = { is: 'first of the month', from: day('2026-12-02') } as const
		expect(aYearOn({ ...terms, plan: { is: 'every months', months: 1, count: 2, start: first } }).plan).toEqual({
			...{ is: 'every months', months: 1, count: 2, start: { is: 'first of the month', from: '2027-12-02' } },
		})
	})

	test('keeps whatever can be kept, at the same prices, and 0 % to the cent changes none', () => {
		const none: Renewal = { rise: { is: 'percent', percent: 0 }, stepCents: 1, adjusted: [] }
		fc.assert(
			fc.property(anySeasons, anyPlan, (seasons, plan) => {
				const last = { ...terms, seasons, plan }
				const { terms: next, total } = renewed(last, none)
				expect(termsSchema.parse(next)).toEqual(next)
				expect(next).toEqual(aYearOn(last))
				expect(total.difference).toBe(0)
			}),
		)
	})
})
