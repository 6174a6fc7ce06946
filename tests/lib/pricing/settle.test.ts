import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { grossParts } from '@/lib/pricing/gross-parts'
import type { Job } from '@/lib/pricing/job'
import { defaultRates } from '@/lib/pricing/rates'
import { settle, splitLike } from '@/lib/pricing/settle'
import { cents, sum } from '@/lib/units/cents'
import { jobs, runs } from './arbitrary'
import { bare, extra, job, words } from './sample'

const settled = (of: Job) => settle(grossParts(of, words, []), of)
const figures = (of: Job, is: string) =>
	settled(of)
		.filter(({ gross }) => gross.is === is)
		.map(({ gross, discountCents, roundingCents, cents: amount }) => [
			gross.cents,
			discountCents,
			roundingCents,
			amount,
		])

/** 31.00, 39.00 and 23.00 of labour. */
const three = [bare(1), bare(2, { openingCm2: 2000 }), bare(3, { isNew: true })]
const wreath = extra('wreath', { minutes: 12.34 })

describe('discount and rounding', () => {
	test.each([
		{
			name: 'no agreement: each container up to the step',
			agreement: { is: 'none' },
			containers: [
				[3100, 0, 400, 3500],
				[3900, 0, 100, 4000],
				[2300, 0, 200, 2500],
			],
			extras: [[1234, 0, 0, 1234]],
		},
		{
			// 7.5 % of 93.00 is 6.975, so 6.98: of 232.67, 292.71 and 172.62 the middle and the first take the odd cents.
			name: 'a discount spread by largest remainder',
			agreement: { is: 'discount', percent: 7.5 },
			containers: [
				[3100, 233, 133, 3000],
				[3900, 293, 393, 4000],
				[2300, 172, 372, 2500],
			],
			extras: [[1234, 93, 0, 1141]],
		},
		{
			name: 'everything off',
			agreement: { is: 'discount', percent: 100 },
			containers: [
				[3100, 3100, 0, 0],
				[3900, 3900, 0, 0],
				[2300, 2300, 0, 0],
			],
			extras: [[1234, 1234, 0, 0]],
		},
		{
			name: 'a fixed season gives no discount',
			agreement: { is: 'fixed', cents: cents(8000), containers: [] },
			containers: [
				[3100, 0, 400, 3500],
				[3900, 0, 100, 4000],
				[2300, 0, 200, 2500],
			],
			extras: [[1234, 0, 0, 1234]],
		},
	] as const)('$name', ({ agreement, containers, extras }) => {
		const of = job({ agreement, containers: three, extras: [wreath] })
		expect(figures(of, 'container')).toEqual(containers)
		expect(figures(of, 'extra')).toEqual(extras)
	})

	test.each(['travel', 'disposal', 'soil', 'design'])('no discount and no rounding on %s', (is) => {
		const of = job({ agreement: { is: 'discount', percent: 12.5 }, containers: three })
		const parts = figures(of, is)
		expect(parts.length).toBeGreaterThan(0)
		for (const [gross, discount, rounding, amount] of parts) expect([discount, rounding, amount]).toEqual([0, 0, gross])
	})

	test('what is a multiple of the step already stays', () => {
		const rates = { ...defaultRates, presentationStepCents: 775 }
		expect(figures(job({ rates, containers: [bare(1)] }), 'container')).toEqual([[3100, 0, 0, 3100]])
	})

	test('a price by class of tax, in the proportions of its working', () => {
		const like = { plants: cents(1200), goods: cents(500), labour: cents(700) }
		expect(splitLike(cents(2500), like)).toEqual({ plants: 1250, goods: 521, labour: 729 })
	})
})

describe('laws of discount and rounding', () => {
	const discounted = (of: Job, percent: number) => settled({ ...of, agreement: { is: 'discount', percent } })
	const percents = fc.oneof(
		fc.integer({ min: 0, max: 100 }),
		fc.integer({ min: 0, max: 100_000 }).map((n) => n / 1000),
	)

	test('a part never falls below zero, and its figures add up', () => {
		fc.assert(
			fc.property(jobs, percents, (of, percent) => {
				for (const { gross, discountCents, roundingCents, cents: amount } of discounted(of, percent)) {
					expect(discountCents).toBeGreaterThanOrEqual(0)
					expect(gross.cents - discountCents).toBeGreaterThanOrEqual(0)
					expect(amount).toBe(gross.cents - discountCents + roundingCents)
				}
			}),
			runs,
		)
	})

	test('containers, and extras, bear their per cent to the cent; a part bears its own within one cent of its share', () => {
		fc.assert(
			fc.property(jobs, percents, (of, percent) => {
				const parts = discounted(of, percent)
				for (const is of ['container', 'extra']) {
					const group = parts.filter(({ gross }) => gross.is === is)
					const whole = sum(group.map(({ gross }) => gross.cents))
					const off = sum(group.map(({ discountCents }) => discountCents))
					expect(off).toBe(Number((BigInt(whole) * BigInt(Math.round(percent * 1000)) * 2n + 100_000n) / 200_000n))
					for (const { gross, discountCents } of group)
						expect(Math.abs(discountCents - (whole === 0 ? 0 : (gross.cents * off) / whole))).toBeLessThan(1)
				}
			}),
			runs,
		)
	})

	test('more discount never makes the whole dearer before rounding, from nothing off to everything off', () => {
		fc.assert(
			fc.property(jobs, percents, percents, (of, a, b) => {
				const exact = (percent: number) =>
					sum(discounted(of, percent).map(({ gross, discountCents }) => cents(gross.cents - discountCents)))
				expect(exact(Math.max(a, b))).toBeLessThanOrEqual(exact(Math.min(a, b)))
				const shrinks = (percent: number) => discounted(of, percent).filter(({ gross }) => gross.is === 'container')
				expect(shrinks(0).every(({ discountCents }) => discountCents === 0)).toBe(true)
				expect(shrinks(100).every(({ cents: amount }) => amount === 0)).toBe(true)
			}),
			runs,
		)
	})

	test('a container is a multiple of the step, less than one step above the exact amount; all else is exact', () => {
		fc.assert(
			fc.property(jobs, (of) => {
				const step = of.rates.presentationStepCents
				for (const { gross, roundingCents, cents: amount } of settled(of)) {
					expect(roundingCents).toBeGreaterThanOrEqual(0)
					expect(roundingCents).toBeLessThan(gross.is === 'container' ? step : 1)
					if (gross.is === 'container') expect(amount % step).toBe(0)
				}
			}),
			runs,
		)
	})
})
