import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { cmPerInch, fromCm, toCm } from '@/lib/format/length'
import { litresPerDryQuart, litresPerGallon } from '@/lib/format/volume'
import { kgPerPound } from '@/lib/format/weight'

// NIST Handbook 44, Appendix C, General Tables of Units of Measurement: what it underlines as exact.
const inch = new Fraction('2.54')
const cubicInchL = inch.pow(3)?.div(1000) ?? new Fraction(0)

describe('exact units', () => {
	test.each([
		{ unit: 'inch, 2.54 cm', ours: cmPerInch, exact: inch },
		{ unit: 'US liquid gallon, 231 cubic inches', ours: litresPerGallon, exact: cubicInchL.mul(231) },
		{
			unit: 'US dry quart, a 32nd of 2150.42 cubic inches',
			ours: litresPerDryQuart,
			exact: cubicInchL.mul('2150.42').div(32),
		},
		{ unit: 'avoirdupois pound, 453.59237 g', ours: kgPerPound, exact: new Fraction('453.59237').div(1000) },
	])('$unit', ({ ours, exact }) => {
		expect(ours).toBe(exact.valueOf())
	})

	// The printed tables, rounded as they print them.
	test.each([
		{ says: 'a cubic inch is 16.387064 cm³', is: cmPerInch ** 3, printed: 16.387064, within: 1e-9 },
		{
			says: 'a cubic foot is 7.481 gallons',
			is: (12 * cmPerInch) ** 3 / 1000 / litresPerGallon,
			printed: 7.481,
			within: 5e-4,
		},
		{ says: 'a cubic foot is 28.316 dm³', is: (12 * cmPerInch) ** 3 / 1000, printed: 28.316, within: 1e-3 },
		{ says: 'a cubic yard is 0.765 m³', is: (36 * cmPerInch) ** 3 / 1e6, printed: 0.765, within: 5e-4 },
		{
			says: 'a dry quart is 67.2006 cubic inches',
			is: (litresPerDryQuart * 1000) / cmPerInch ** 3,
			printed: 67.2006,
			within: 5e-5,
		},
		{
			says: 'a liquid quart is 57.75 cubic inches',
			is: (litresPerGallon * 250) / cmPerInch ** 3,
			printed: 57.75,
			within: 1e-9,
		},
	])('$says', ({ is, printed, within }) => {
		expect(Math.abs(is - printed)).toBeLessThanOrEqual(within)
	})

	test('a dry quart is a sixth more than a liquid one: bags are marked in dry quarts', () => {
		expect(litresPerDryQuart / (litresPerGallon / 4)).toBeCloseTo(1.16365, 5)
	})
})

// Tape measures are read to a sixteenth of an inch.
describe('sixteenths kept in cm', () => {
	test('each of them up to ten feet is exact, and comes back', () => {
		for (let n = 1; n <= 16 * 120; n += 1) {
			const kept = toCm(n / 16, 'in')
			expect(new Fraction(String(kept)).equals(inch.mul(n).div(16))).toBe(true)
			expect(fromCm(kept, 'in')).toBe(n / 16)
		}
	})
})
