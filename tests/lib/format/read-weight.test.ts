import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readWeight, typedWeight, weightUnlessChanged } from '@/lib/format/read-weight'

describe('a weight as people write it', () => {
	// A pound is 0.45359237 kg exactly (NIST Handbook 44, Appendix C).
	test.each([
		['26', 'in', 11.79340162],
		['0.001', 'in', 0.00045359237],
		['100', 'in', 45.359237],
		['12.5', 'cm', 12.5],
		['12 kg', 'in', 12],
		['12.75KG', 'in', 12.75],
		['26 lbs', 'cm', 11.79340162],
		['1 pound', 'cm', 0.45359237],
		['3 oz', 'in', 0.08504856938],
		['16 ounces', 'cm', 0.45359237],
		['90 g', 'in', 0.09],
		['.5', 'cm', 0.5],
		[' 0 ', 'in', 0],
	] as const)('“%s” where one measures in %s: %d kg', (typed, unit, kg) => {
		expect(readWeight(typed, unit)).toBe(kg)
	})

	test.each(['', 'heavy', '-3', '1e3', '12.3456', '123456', '4 st', '3 in', '1,5', '½', '12 kg 5'])(
		'“%s” is none',
		(typed) => expect(readWeight(typed, 'in')).toBeNull(),
	)
})

describe('a weight in a box', () => {
	test('comes back as it was typed, in pounds and in kg, to the thousandth', () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 4_409_245 }), fc.constantFrom('in', 'cm'), (thousandths, unit) => {
				const typed = String(thousandths / 1000)
				const kg = readWeight(typed, unit) ?? expect.fail('it is a weight')
				expect(typedWeight(kg, unit)).toBe(typed)
				expect(Math.abs(kg - (thousandths / 1000) * (unit === 'in' ? 0.45359237 : 1))).toBeLessThan(1e-10)
			}),
		)
	})

	test('that was kept in kg survives being shown in pounds and saved; a thousandth more is a change', () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 1_999_999 }), (grams) => {
				const kept = grams / 1000
				const back = readWeight(typedWeight(kept, 'in'), 'in')
				expect(weightUnlessChanged(back, kept, 'in')).toBe(kept)
				const more = readWeight(String(Number(typedWeight(kept, 'in')) + 1), 'in')
				expect(weightUnlessChanged(more, kept, 'in')).toBe(more)
			}),
		)
	})

	test('nothing where there was something, and something where there was nothing, are changes', () => {
		expect(weightUnlessChanged(null, 7.5, 'in')).toBeNull()
		expect(weightUnlessChanged(7.5, null, 'in')).toBe(7.5)
	})
})
