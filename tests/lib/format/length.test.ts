import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fromCm, length, toCm } from '@/lib/format/length'

describe('a length as the studio measures it', () => {
	test.each([
		{ name: 'the reference pot', cm: 45.72, inch: '18 in', metric: '45.7 cm' },
		{ name: 'a yard', cm: 91.44, inch: '36 in', metric: '91.4 cm' },
		{ name: 'a pot measured in metres', cm: 46, inch: '18.1 in', metric: '46 cm' },
		{ name: 'half an inch', cm: 1.27, inch: '0.5 in', metric: '1.3 cm' },
		{ name: 'a sixteenth', cm: 0.15875, inch: '0.1 in', metric: '0.2 cm' },
		{ name: 'nothing', cm: 0, inch: '0 in', metric: '0 cm' },
	])('$name: $inch, $metric', ({ cm, inch, metric }) => {
		expect([length(cm, 'in'), length(cm, 'cm')]).toEqual([inch, metric])
	})

	// NIST Handbook 44, Appendix C: the inch is 2.54 cm.
	test('gives back the tenth of an inch that was measured', () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 4000 }), (tenths) => {
				expect(length((tenths * 254) / 1000, 'in')).toBe(`${tenths / 10} in`)
			}),
		)
	})
})

describe('what was measured', () => {
	test.each([
		{ name: 'the reference pot', measured: 18, unit: 'in', cm: 45.72 },
		{ name: 'a box of seven and five eighths', measured: 7.625, unit: 'in', cm: 19.3675 },
		{ name: 'a pot in the metric shop', measured: 46.5, unit: 'cm', cm: 46.5 },
	] as const)('$name: $measured $unit are $cm cm', ({ measured, unit, cm }) => {
		expect(toCm(measured, unit)).toBe(cm)
		expect(fromCm(cm, unit)).toBe(measured)
	})

	test('comes back as it was typed, to four decimals', () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 4_000_000 }), fc.constantFrom('in' as const, 'cm' as const), (n, unit) => {
				expect(fromCm(toCm(n / 10_000, unit), unit)).toBe(n / 10_000)
			}),
			{ numRuns: 2000 },
		)
	})
})
