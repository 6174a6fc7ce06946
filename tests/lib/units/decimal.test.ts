import fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { divideHalfUp, divideUp, thousandths } from '@/lib/units/decimal'

describe('thousandths', () => {
	test.each([
		{ name: 'a markup', value: 2.2, is: 2200n },
		{ name: 'a rate of tax', value: 7.125, is: 7125n },
		{ name: 'a weight that no float holds exactly', value: 1.005, is: 1005n },
		{ name: 'the least', value: 0.001, is: 1n },
		{ name: 'a whole', value: 45, is: 45_000n },
		{ name: 'less than nothing', value: -0.375, is: -375n },
		{ name: 'nothing', value: 0, is: 0n },
	])('$name: $value', ({ value, is }) => {
		expect(thousandths(value)).toBe(is)
	})

	test.each([
		{ name: 'a fourth decimal', value: 0.0625 },
		{ name: 'a sum of floats', value: 0.1 + 0.2 },
		{ name: 'a third', value: 1 / 3 },
		{ name: 'what counts no thousandths any more', value: 2 ** 50 },
		{ name: 'no number', value: Number.NaN },
		{ name: 'without end', value: Number.NEGATIVE_INFINITY },
	])('refuses $name', ({ value }) => {
		expect(() => thousandths(value)).toThrow(`thousandths: ${value} has more than three decimals`)
	})

	test('takes every decimal of three places as it was written', () => {
		fc.assert(
			fc.property(fc.integer({ min: -1_000_000_000, max: 1_000_000_000 }), (scaled) => {
				const written = new Fraction(scaled, 1000).toString()
				expect(thousandths(Number((scaled / 1000).toFixed(3)))).toBe(BigInt(scaled))
				expect(new Fraction(written).mul(1000).equals(scaled)).toBe(true)
			}),
		)
	})
})

describe('to the nearest whole', () => {
	test.each([
		{ name: 'under a half', numerator: 1_449n, denominator: 1000n, is: 1n },
		{ name: 'a half goes up', numerator: 5n, denominator: 2n, is: 3n },
		{ name: 'a half of a refund goes as far', numerator: -5n, denominator: 2n, is: -3n },
		{ name: 'just under a half', numerator: 24_999n, denominator: 10_000n, is: 2n },
		{ name: 'a third of a refund', numerator: -4n, denominator: 3n, is: -1n },
		{ name: 'even', numerator: 84n, denominator: 7n, is: 12n },
		{ name: 'nothing', numerator: 0n, denominator: 9n, is: 0n },
	])('$name: $numerator ÷ $denominator', ({ numerator, denominator, is }) => {
		expect(divideHalfUp(numerator, denominator)).toBe(is)
	})

	test.each([0n, -3n])('refuses to divide by %s', (denominator) => {
		expect(() => divideHalfUp(8n, denominator)).toThrow(`divideHalfUp: ${denominator} is not above zero`)
	})
})

describe('to the next whole above', () => {
	test.each([
		{ name: 'a stem more than a pack', numerator: 11n, denominator: 10n, is: 2n },
		{ name: 'whole packs', numerator: 30n, denominator: 6n, is: 5n },
		{ name: 'less than one', numerator: 1n, denominator: 25n, is: 1n },
		{ name: 'none', numerator: 0n, denominator: 8n, is: 0n },
	])('$name: $numerator ÷ $denominator', ({ numerator, denominator, is }) => {
		expect(divideUp(numerator, denominator)).toBe(is)
	})

	test.each([
		{ name: 'by nothing', numerator: 5n, denominator: 0n },
		{ name: 'less than nothing', numerator: -1n, denominator: 4n },
	])('refuses to divide $name', ({ numerator, denominator }) => {
		expect(() => divideUp(numerator, denominator)).toThrow('divideUp:')
	})
})

const numerators = fc.bigInt({ min: -(10n ** 24n), max: 10n ** 24n })
const denominators = fc.oneof(fc.bigInt({ min: 1n, max: 40n }), fc.bigInt({ min: 1n, max: 10n ** 12n }))

// fraction.js reckons in exact fractions; rounding away from zero at a half is floor(|x| + 1/2) with the sign put back.
describe('both, beside exact fractions', () => {
	test('half up', () => {
		fc.assert(
			fc.property(numerators, denominators, (numerator, denominator) => {
				const exact = new Fraction(numerator, denominator)
				const away = exact.abs().add(1, 2).floor()
				const is = divideHalfUp(numerator, denominator)
				expect(new Fraction(is).equals(exact.compare(0) < 0 ? away.neg() : away)).toBe(true)
			}),
			{ numRuns: 1000 },
		)
	})

	test('up', () => {
		fc.assert(
			fc.property(numerators, denominators, (numerator, denominator) => {
				const whole = numerator < 0n ? -numerator : numerator
				const is = divideUp(whole, denominator)
				expect(new Fraction(is).equals(new Fraction(whole, denominator).ceil())).toBe(true)
			}),
			{ numRuns: 1000 },
		)
	})
})
