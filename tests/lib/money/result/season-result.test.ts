import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { barsOf } from '@/lib/money/result/bars'
import { type SeasonJob, seasonResult } from '@/lib/money/result/season-result'
import { actualInWords, hoursInWords, missingInWords, resultInWords } from '@/lib/money/words/result'
import { cents, sum } from '@/lib/units/cents'
import { clientId, money } from '../sample'

const job = (
	client: number,
	value: number,
	[cost, minutes]: readonly [number, number],
	[actual, took]: readonly [number | null, number | null],
): SeasonJob => ({
	...{ client: clientId(client), valueCents: cents(value) },
	estimated: { costCents: cents(cost), minutes },
	actual: { costCents: actual === null ? null : cents(actual), minutes: took },
})
const jobs = [
	job(1, 40_000, [22_000, 190.5], [24_000, 205]),
	job(2, 90_000, [40_000, 310], [null, null]),
	job(1, 20_000, [9000, 75.25], [null, 80]),
	job(3, 0, [1500, 20], [1700, null]),
]
const { clients, all } = seasonResult(jobs)

describe('what a season brought', () => {
	test('by client, the largest value first', () => {
		expect(clients.map(({ client, ...of }) => [client, of.jobs, of.valueCents, of.estimatedMarginPercent])).toEqual([
			[clientId(2), 1, 90_000, 55.6],
			[clientId(1), 2, 60_000, 48.3],
			[clientId(3), 1, 0, null],
		])
	})

	test('actual value and cost are of the same jobs, and what is missing is told', () => {
		expect(clients[1]?.actual).toEqual({
			jobs: 1,
			missing: 1,
			valueCents: 40_000,
			costCents: 24_000,
			marginPercent: 40,
		})
		expect(clients[1]?.hours).toEqual({ missing: 0, actualMinutes: 285, estimatedMinutes: 265.75 })
		expect(clients[0]?.actual).toEqual({ jobs: 0, missing: 1, valueCents: 0, costCents: 0, marginPercent: null })
		expect(all.actual).toEqual({ jobs: 2, missing: 2, valueCents: 40_000, costCents: 25_700, marginPercent: 35.8 })
		expect([all.valueCents, all.estimatedCostCents, all.estimatedMinutes]).toEqual([150_000, 72_500, 595.75])
		expect(all.hours).toEqual({ missing: 2, actualMinutes: 285, estimatedMinutes: 265.75 })
	})

	test('in words', () => {
		expect(missingInWords(all)).toEqual(['Two jobs have no actual cost yet.', 'Two jobs have no hours yet.'])
		expect(clients.map(missingInWords)[2]).toEqual(['One job has no hours yet.'])
		expect(resultInWords(all, money)).toBe('$1,500.00, estimated to cost $725.00: margin 51.7 %')
		expect(clients.map((each) => actualInWords(each, money))).toEqual([
			null,
			'$400.00, in fact $240.00: margin 40 %',
			'$0.00, in fact $17.00: no margin',
		])
		expect([285, 40, 59.6, 120, 0].map(hoursInWords)).toEqual([
			'4 h 45 min',
			'40 min',
			'1 h 0 min',
			'2 h 0 min',
			'0 min',
		])
	})

	test('as bars by one measure, none for a cost that is not known', () => {
		expect(barsOf(clients)).toEqual([
			{ value: 1000, estimated: 444, actual: null },
			{ value: 667, estimated: 344, actual: null },
			{ value: 0, estimated: 17, actual: 19 },
		])
		expect(barsOf([])).toEqual([])
		expect(barsOf(seasonResult([job(1, 0, [0, 0], [0, 0])]).clients)).toEqual([{ value: 0, estimated: 0, actual: 0 }])
	})

	test('clients sum to all, whatever the order of the jobs', () => {
		const maybe = fc.option(fc.nat(50_000))
		const drawn = fc.tuple(fc.nat(3), fc.nat(90_000), fc.tuple(fc.nat(50_000), fc.nat(900)), fc.tuple(maybe, maybe))
		fc.assert(
			fc.property(fc.array(drawn, { maxLength: 12 }), (of) => {
				const made = of.map((each) => job(...each))
				const found = seasonResult(made)
				expect(seasonResult(made.toReversed())).toEqual(found)
				expect(sum(found.clients.map(({ valueCents }) => valueCents))).toBe(found.all.valueCents)
				expect(sum(found.clients.map(({ actual }) => actual.costCents))).toBe(found.all.actual.costCents)
				expect(found.clients.reduce((n, { actual }) => n + actual.missing, 0)).toBe(found.all.actual.missing)
				for (const { value, estimated, actual } of barsOf(found.clients))
					for (const length of [value, estimated, actual ?? 0]) {
						expect(length).toBeGreaterThanOrEqual(0)
						expect(length).toBeLessThanOrEqual(1000)
					}
			}),
		)
	})
})
