import fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { labourCost } from '@/lib/pricing/cost/labour'
import { defaultRates } from '@/lib/pricing/rates'

// Loaded labour: wage × burden × paid hours ÷ billable hours. Common practice, no published source; worked by hand:
// 18.00 × 1.30 × 2,080 ÷ 1,500 = 32.448 for a billable hour.
const rates = {
	...defaultRates,
	crew: 1,
	wageCentsPerHour: { owner: 1800, helper: 1100 },
	burden: 1.3,
	paidHours: 2080,
	billableHours: 1500,
}

describe('an hour at 18.00, loaded', () => {
	test.each([
		{ name: 'an hour, 32.448', hours: 1, cost: 3245 },
		{ name: 'a thousand hours, to the cent', hours: 1000, cost: 3_244_800 },
		{ name: 'two hours, 64.896', hours: 2, cost: 6490 },
		{ name: 'a quarter of an hour, 8.112', hours: 0.25, cost: 811 },
	])('$name', ({ hours, cost }) => {
		expect(labourCost(hours * 60, 'owner', rates)).toBe(cost)
		expect(labourCost(hours * 60, 'crew', rates)).toBe(cost)
	})

	test('a crew of a 26.00 owner and 18.00 helpers costs the mean of their wages', () => {
		const drawn = fc.record({ crew: fc.integer({ min: 2, max: 6 }), milli: fc.nat(600_000) })
		fc.assert(
			fc.property(drawn, ({ crew, milli }) => {
				const mean = new Fraction(2600 + 1800 * (crew - 1), crew)
				const exact = mean.mul('1.3').mul(2080).div(1500).mul(milli).div(60_000)
				const wageCentsPerHour = { owner: 2600, helper: 1800 }
				const cost = labourCost(milli / 1000, 'crew', { ...rates, crew, wageCentsPerHour })
				expect(cost).toBe(exact.add(1, 2).floor().valueOf())
			}),
			{ numRuns: 500 },
		)
	})
})
