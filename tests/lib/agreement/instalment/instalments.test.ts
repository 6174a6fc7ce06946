import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { instalmentSchema, instalmentsOf } from '@/lib/agreement/instalment/instalments'
import { type Plan, planSchema } from '@/lib/agreement/instalment/plan'
import { dueInWords } from '@/lib/agreement/instalment/words'
import { fixedCents } from '@/lib/agreement/season'
import { cents, sum } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { anyPlan, anySeasons, quarterly, spring, summer, winter } from '../sample'

const told = (plan: Plan, seasons = [winter, spring, summer]) =>
	instalmentsOf(seasons, plan).map(({ number, cents: amount, due }) => `${number}: ${amount} ${dueInWords(due)}`)

describe('the fixed prices of winter and spring, 612.50 and 384.01', () => {
	test('quarterly from a day', () => {
		expect(told(quarterly)).toEqual([
			'1: 24913 on 1 December 2026',
			'2: 24913 on 1 March 2027',
			'3: 24913 on 1 June 2027',
			'4: 24912 on 1 September 2027',
		])
	})

	test('monthly from a 31st: back to the 31st wherever the month has one', () => {
		const plan: Plan = { is: 'every months', months: 1, count: 5, start: { is: 'on', day: day('2026-12-31') } }
		expect(told(plan)).toEqual([
			'1: 19931 on 31 December 2026',
			'2: 19930 on 31 January 2027',
			'3: 19930 on 28 February 2027',
			'4: 19930 on 31 March 2027',
			'5: 19930 on 30 April 2027',
		])
	})

	test('on the first of every second month, beginning with the next', () => {
		const start = { is: 'first of the month', from: day('2026-12-02') } as const
		expect(told({ is: 'every months', months: 2, count: 2, start })).toEqual([
			'1: 49826 on 1 January 2027',
			'2: 49825 on 1 March 2027',
		])
	})

	test('from the approval, whenever that is', () => {
		expect(told({ is: 'every months', months: 6, count: 2, start: { is: 'on approval' } })).toEqual([
			'1: 49826 when you sign',
			'2: 49825 6 months after you sign',
		])
	})

	test('per visit: the price of a season in equal parts at its visits, a quoted season at none', () => {
		expect(told({ is: 'per visit' })).toEqual([
			'1: 30625 when winter 2026–27 is in',
			'2: 30625 after take-down 1 of winter 2026–27',
			'3: 12801 when spring 2027 is in',
			'4: 12800 after watering 1 of spring 2027',
			'5: 12800 after watering 2 of spring 2027',
		])
	})

	test('per visit, where a season names no visit: when it is in', () => {
		expect(told({ is: 'per visit' }, [{ ...spring, visits: [] }])).toEqual(['1: 38401 when spring 2027 is in'])
	})

	test('on dates of their own, by shares', () => {
		const parts = [
			{ weight: 40, due: { is: 'on approval', monthsLater: 0 } as const },
			{ weight: 30, due: { is: 'at visit', season: winter, visit: 'install', number: 1 } as const },
			{ weight: 30, due: { is: 'on', day: day('2027-05-31') } as const },
		]
		expect(told({ is: 'own dates', parts })).toEqual([
			'1: 39861 when you sign',
			'2: 29895 when winter 2026–27 is in',
			'3: 29895 on 31 May 2027',
		])
	})
})

describe('whatever the plan', () => {
	test('the instalments sum to the fixed prices', () => {
		fc.assert(
			fc.property(anySeasons, anyPlan, (seasons, plan) => {
				expect(sum(instalmentsOf(seasons, plan).map((each) => each.cents))).toBe(fixedCents(seasons))
			}),
			{ numRuns: 1000 },
		)
	})

	test('each is above zero, numbered from 1, and can be stored', () => {
		fc.assert(
			fc.property(anySeasons, anyPlan, (seasons, plan) => {
				const all = instalmentsOf(seasons, plan)
				expect(all.map(({ number }) => number)).toEqual(all.map((_, index) => index + 1))
				for (const each of all) expect(instalmentSchema.parse(each)).toEqual(each)
			}),
		)
	})

	test('equal parts differ by a cent at most, the earlier never the less', () => {
		fc.assert(
			fc.property(fc.nat(10_000_000), fc.integer({ min: 1, max: 36 }), (amount, count) => {
				const season = { ...winter, price: { is: 'fixed', cents: cents(amount) } as const }
				const plan = { ...quarterly, count } as const
				const parts = instalmentsOf([season], plan).map((each) => each.cents)
				expect(parts).toEqual(parts.toSorted((a, b) => b - a))
				const floor = Math.floor(amount / count)
				for (const part of parts) expect([floor, floor + 1]).toContain(part)
			}),
		)
	})

	test('amounts that sum to the price come out as they were typed', () => {
		fc.assert(
			fc.property(fc.array(fc.integer({ min: 1, max: 200_000 }), { minLength: 1, maxLength: 36 }), (amounts) => {
				const season = { ...winter, price: { is: 'fixed', cents: sum(amounts.map(cents)) } as const }
				const parts = amounts.map((weight) => ({ weight, due: { is: 'on approval', monthsLater: 0 } as const }))
				expect(instalmentsOf([season], { is: 'own dates', parts }).map((each) => each.cents)).toEqual(amounts)
			}),
		)
	})
})

describe('what is no plan', () => {
	const due = { is: 'on', day: '2027-05-31' }
	test.each([
		['no instalment', { ...quarterly, count: 0 }],
		['no instalment of its own', { is: 'own dates', parts: [] }],
		['a share of nothing', { is: 'own dates', parts: [{ weight: 0, due }] }],
		['half a share', { is: 'own dates', parts: [{ weight: 0.5, due }] }],
		['every 0 months', { ...quarterly, months: 0 }],
		['30 February', { is: 'own dates', parts: [{ weight: 1, due: { is: 'on', day: '2027-02-30' } }] }],
		['a word beside it', { is: 'per visit', note: 'a' }],
	])('%s', (_, plan) => {
		expect(planSchema.safeParse(plan).success).toBe(false)
	})

	test('while these are', () => {
		expect(planSchema.safeParse(quarterly).success).toBe(true)
		expect(planSchema.safeParse({ is: 'own dates', parts: [{ weight: 1, due }] }).success).toBe(true)
	})
})
