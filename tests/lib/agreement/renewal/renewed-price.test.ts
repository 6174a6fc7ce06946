import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Rise, renewedPrice, riseSchema } from '@/lib/agreement/renewal/renewed-price'
import { cents } from '@/lib/units/cents'

const percent = (value: number): Rise => ({ is: 'percent', percent: value })
const amount = (value: number): Rise => ({ is: 'amount', cents: cents(value) })

test.each([
	{ name: '+4 % to the cent', was: 61_250, rise: percent(4), step: 1, is: 63_700 },
	{ name: '+4 % to five', was: 61_250, rise: percent(4), step: 500, is: 63_500 },
	{ name: 'a half goes up', was: 50_500, rise: percent(0), step: 1000, is: 51_000 },
	{ name: '+3.5 % of an odd price', was: 38_401, rise: percent(3.5), step: 1, is: 39_745 },
	{ name: '−10 % to five', was: 38_401, rise: percent(-10), step: 500, is: 34_500 },
	{ name: 'by an amount', was: 38_401, rise: amount(2500), step: 100, is: 40_900 },
	{ name: 'down by more than it was', was: 2000, rise: amount(-2600), step: 100, is: -600 },
	{ name: 'what rounds to nothing', was: 240, rise: percent(0), step: 500, is: 0 },
])('$name', ({ was, rise, step, is }) => {
	expect(renewedPrice(cents(was), rise, step)).toBe(is)
})

const price = fc.nat(10_000_000).map(cents)
const step = fc.constantFrom(1, 5, 50, 100, 500, 1000, 2500, 333)
const milli = fc.integer({ min: -100_000, max: 100_000 })
const ofMilli = (value: number) => percent(value / 1000)

describe('whatever the price', () => {
	test('+0 % and +0.00 give the same price, rounded, and to the cent the same', () => {
		fc.assert(
			fc.property(price, step, (was, by) => {
				expect(renewedPrice(was, percent(0), by)).toBe(Math.floor(was / by + 0.5) * by)
				expect(renewedPrice(was, amount(0), by)).toBe(renewedPrice(was, percent(0), by))
				expect(renewedPrice(was, percent(0), 1)).toBe(was)
			}),
		)
	})

	test('a higher per cent is never a lower price', () => {
		fc.assert(
			fc.property(price, step, milli, milli, (was, by, a, b) => {
				const [low, high] = [Math.min(a, b), Math.max(a, b)]
				expect(renewedPrice(was, ofMilli(low), by)).toBeLessThanOrEqual(renewedPrice(was, ofMilli(high), by))
			}),
		)
	})

	test('a higher price stays the higher', () => {
		fc.assert(
			fc.property(price, price, step, milli, (a, b, by, rise) => {
				const [low, high] = [cents(Math.min(a, b)), cents(Math.max(a, b))]
				expect(renewedPrice(low, ofMilli(rise), by)).toBeLessThanOrEqual(renewedPrice(high, ofMilli(rise), by))
			}),
		)
	})

	test('rounding changes it by half a step at most, never by one, and lands on a step', () => {
		fc.assert(
			fc.property(price, step, milli, (was, by, rise) => {
				const is = renewedPrice(was, ofMilli(rise), by)
				// In whole numbers, so that the check itself does not round.
				const off = BigInt(is) * 100_000n - BigInt(was) * BigInt(100_000 + rise)
				expect((off < 0n ? -off : off) * 2n <= BigInt(by) * 100_000n).toBe(true)
				expect(Math.abs(is % by)).toBe(0)
			}),
		)
	})
})

test('no step, half a cent and a step below zero are broken promises', () => {
	for (const by of [0, 0.5, -5]) expect(() => renewedPrice(cents(100), percent(4), by)).toThrow(/is no step/)
})

test.each([
	['four decimals', { is: 'percent', percent: 4.0001 }],
	['more than all', { is: 'percent', percent: -101 }],
	['half a cent', { is: 'amount', cents: 0.5 }],
	['both', { is: 'percent', percent: 4, cents: 5 }],
])('no rise: %s', (_, rise) => {
	expect(riseSchema.safeParse(rise).success).toBe(false)
})

test('a rise', () => {
	expect(riseSchema.parse({ is: 'percent', percent: 4.125 })).toEqual(percent(4.125))
})
