import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { typedLength, unlessChanged } from '@/lib/format/typed-length'

describe('a length in a box', () => {
	// An inch is 2.54 cm exactly (NIST Handbook 44, Appendix C).
	test.each([
		[45.72, 'in', '18'],
		[40.9575, 'in', '16.125'],
		[45.87875, 'in', '18.0625'],
		[1, 'in', '0.3937'],
		[45.72, 'cm', '45.72'],
		[4.6, 'cm', '4.6'],
		// as cards were kept once, to the hundredth of a millimetre
		[40.958, 'in', '16.125'],
		[30.163, 'in', '11.875'],
	] as const)('%s cm, %s: %s', (cm, of, says) => {
		expect(typedLength(cm, of)).toBe(says)
	})

	test.each([
		{ name: 'what shows alike stays as it was', typed: 45.99991, kept: 46, is: 46 },
		{ name: 'an eighth more is a change', typed: 46.315, kept: 46, is: 46.315 },
		{ name: 'nothing where there was something', typed: null, kept: 46, is: null },
		{ name: 'something where there was nothing', typed: 46.00001, kept: null, is: 46.00001 },
	])('$name', ({ typed, kept, is }) => {
		expect(unlessChanged(typed, kept, 'in')).toBe(is)
	})

	test('of hundredths of a millimetre survives being shown and saved', () => {
		const lengths = fc.integer({ min: 0, max: 1_000_000 }).map((hundredths) => hundredths / 1000)
		fc.assert(
			fc.property(lengths, fc.constantFrom('in', 'cm'), (kept, unit) => {
				const back = Number(typedLength(kept, unit)) * (unit === 'in' ? 2.54 : 1)
				return unlessChanged(Math.round(back * 1000) / 1000, kept, unit) === kept
			}),
		)
	})
})
