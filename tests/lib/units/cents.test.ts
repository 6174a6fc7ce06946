import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cents, sum, zero } from '@/lib/units/cents'

describe('cents', () => {
	test.each([
		{ name: 'the price of a pot', amount: 28_500 },
		{ name: 'a discount', amount: -3117 },
		{ name: 'nothing', amount: 0 },
		{ name: 'the most that counts exactly', amount: Number.MAX_SAFE_INTEGER },
	])('$name is whole: $amount', ({ amount }) => {
		expect(cents(amount)).toBe(amount)
	})

	test('nothing has no sign', () => {
		expect(cents(-0)).toBe(0)
		expect(Object.is(cents(-0), -0)).toBe(false)
		expect(zero).toBe(0)
	})

	test.each([
		{ name: 'half a cent', amount: 12.5 },
		{ name: 'a price by way of a float', amount: 4.35 * 100 },
		{ name: 'more than counts exactly', amount: Number.MAX_SAFE_INTEGER + 1 },
		{ name: 'no number', amount: Number.NaN },
		{ name: 'without end', amount: Number.POSITIVE_INFINITY },
	])('refuses $name', ({ amount }) => {
		expect(() => cents(amount)).toThrow(`cents: ${amount} is not a whole number of cents`)
	})
})

const amounts = fc.array(fc.integer({ min: -1_000_000_000, max: 1_000_000_000 }).map(cents), { maxLength: 20 })

describe('sum', () => {
	test('of nothing is nothing', () => {
		expect(sum([])).toBe(0)
	})

	test('of a charge, a discount and a tax', () => {
		expect(sum([cents(17_500), cents(-1750), cents(945)])).toBe(16_695)
	})

	test('refuses what has grown past counting', () => {
		expect(() => sum([cents(Number.MAX_SAFE_INTEGER), cents(2)])).toThrow('is not a whole number of cents')
	})

	test('is the same in any order, and adds one list to another', () => {
		fc.assert(
			fc.property(amounts, amounts, (a, b) => {
				expect(sum([...a, ...b])).toBe(sum(a) + sum(b))
				expect(sum(a.toReversed())).toBe(sum(a))
			}),
		)
	})
})
