import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { labourCost, labourPrice } from '@/lib/pricing/cost/labour'
import { defaultRates } from '@/lib/pricing/rates'
import { rates, runs } from '../arbitrary'

describe('labour', () => {
	test.each([
		{ name: 'an hour at the billed rate', minutes: 60, billed: 6000, price: 6000 },
		{ name: 'half a cent goes up', minutes: 0.005, billed: 6000, price: 1 },
		{ name: 'less than half goes down', minutes: 0.004, billed: 6000, price: 0 },
		{ name: 'an odd rate', minutes: 53.667, billed: 6173, price: 5521 },
		{ name: 'no minutes', minutes: 0, billed: 7100, price: 0 },
	])('price: $name', ({ minutes, billed, price }) => {
		expect(labourPrice(minutes, { ...defaultRates, billedCentsPerHour: billed })).toBe(price)
	})

	// Wages 26.00 and 18.00, burden 1.3, 2,080 paid hours to 1,500 billable.
	test.each([
		{ name: 'a crew of two, an hour of either in turn', hands: 'crew', crew: 2, minutes: 60, cost: 3966 },
		{ name: 'a crew of three has two helpers', hands: 'crew', crew: 3, minutes: 60, cost: 3726 },
		{ name: 'alone, the owner', hands: 'crew', crew: 1, minutes: 60, cost: 4687 },
		{ name: 'design is the owner’s, whoever else is there', hands: 'owner', crew: 4, minutes: 30, cost: 2343 },
		{ name: 'no minutes', hands: 'crew', crew: 2, minutes: 0, cost: 0 },
	] as const)('cost: $name', ({ hands, crew, minutes, cost }) => {
		expect(labourCost(minutes, hands, { ...defaultRates, crew })).toBe(cost)
	})

	test('minutes finer than a thousandth are refused', () => {
		expect(() => labourPrice(1 / 3, defaultRates)).toThrow('more than three decimals')
	})

	test('a thousandth of a minute more never costs less', () => {
		const thousandths = fc.nat(600_000)
		fc.assert(
			fc.property(thousandths, rates, fc.constantFrom('crew', 'owner'), (n, by, hands) => {
				const [less, more] = [n / 1000, (n + 1) / 1000]
				expect(labourPrice(more, by)).toBeGreaterThanOrEqual(labourPrice(less, by))
				expect(labourCost(more, hands, by)).toBeGreaterThanOrEqual(labourCost(less, hands, by))
			}),
			runs,
		)
	})
})
