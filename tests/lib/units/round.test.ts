import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { halfUp, nearestOdd } from '@/lib/units/round'

describe('half up', () => {
	test.each([
		{ name: 'a half goes up', value: 4.5, is: 5 },
		{ name: 'just under a half goes down', value: 8.499999, is: 8 },
		{ name: 'a half that a float fell short of', value: 0.1 * 3 * 5, is: 2 },
		{ name: 'a product that a float fell short of', value: 1.15 * 10, is: 12 },
		{ name: 'nothing', value: 0, is: 0 },
	])('$name: $value is $is', ({ value, is }) => {
		expect(halfUp(value)).toBe(is)
	})

	test.each([
		{ value: 0.3465, is: 0.347 },
		{ value: 1.0005, is: 1.001 },
		{ value: 2.4684, is: 2.468 },
	])('to a thousandth: $value is $is', ({ value, is }) => {
		expect(halfUp(value, 1000)).toBe(is)
	})

	test('never falls when the value rises, and is never further than a half from it', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 0, max: 9999, noNaN: true }),
				fc.double({ min: 0, max: 5, noNaN: true }),
				(a, by) => {
					expect(halfUp(a + by)).toBeGreaterThanOrEqual(halfUp(a))
					expect(Math.abs(halfUp(a) - a)).toBeLessThanOrEqual(0.5 + 1e-7)
				},
			),
		)
	})
})

describe('the nearest odd number', () => {
	test.each([
		{ value: 0, is: 1 },
		{ value: 1.99, is: 1 },
		{ value: 2, is: 3 },
		{ value: 2.5, is: 3 },
		{ value: 3.999, is: 3 },
		{ value: 4, is: 5 },
		{ value: 7.4, is: 7 },
	])('to $value is $is', ({ value, is }) => {
		expect(nearestOdd(value)).toBe(is)
	})

	test('is odd, at most one away, and never falls when the value rises', () => {
		fc.assert(
			fc.property(fc.double({ min: 0, max: 500, noNaN: true }), fc.double({ min: 0, max: 5, noNaN: true }), (a, by) => {
				expect(nearestOdd(a) % 2).toBe(1)
				expect(Math.abs(nearestOdd(a) - a)).toBeLessThanOrEqual(1 + 1e-9)
				expect(nearestOdd(a + by)).toBeGreaterThanOrEqual(nearestOdd(a))
			}),
		)
	})
})
