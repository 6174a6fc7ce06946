import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { howToMeasure, readLength } from '@/lib/format/read-length'
import { typedLength } from '@/lib/format/typed-length'

// An inch is 2.54 cm exactly (NIST Handbook 44, Appendix C).
describe('a length as people write it', () => {
	test.each([
		['18', 45.72],
		['18.5', 46.99],
		[' 18 1/2 ', 46.99],
		['18-1/2', 46.99],
		['18  1/2"', 46.99],
		['18½', 46.99],
		['18 ½ in', 46.99],
		['½', 1.27],
		['7/16', 1.11125],
		['7⁄16 in.', 1.11125],
		['.5', 1.27],
		['18.0625', 45.87875],
		['18 in', 45.72],
		['18"', 45.72],
		['18″', 45.72],
		['18 inches', 45.72],
		['46 cm', 46],
		['46CM', 46],
		['45.72 cm', 45.72],
		['3 mm', 0.3],
		['0', 0],
		['-0', 0],
		['-3', -7.62],
		['−3 cm', -3],
	])('%j, in inches where it names no unit: %d cm', (typed, cm) => {
		expect(readLength(typed, 'in')).toBe(cm)
	})

	test.each([
		['46', 46],
		['46.5', 46.5],
		['46 1/2', 46.5],
		['18 in', 45.72],
		['18 1/2"', 46.99],
		['465 mm', 46.5],
	])('%j, in centimetres where it names no unit: %d cm', (typed, cm) => {
		expect(readLength(typed, 'cm')).toBe(cm)
	})

	test.each([
		'',
		' ',
		'1e400',
		'1e9',
		'NaN',
		'Infinity',
		'-Infinity',
		'--5',
		'+5',
		'１８',
		'0x10',
		'1,5',
		'1 2',
		'1.',
		'1.55555',
		'9'.repeat(20),
		'18 1/3',
		'18 1/0',
		'18 0/2',
		'18 2/2',
		'18 9/8',
		'181/2',
		'1/2 1/2',
		'½½',
		'18.5 1/2',
		'18.5½',
		'18 lb',
		'18 constructor',
		`1'6"`,
		'in',
		'"',
		'deep',
	])('%j is none', (typed) => {
		expect([readLength(typed, 'in'), readLength(typed, 'cm')]).toEqual([null, null])
	})

	test('says how to write one, in the units of the studio', () => {
		for (const unit of ['in', 'cm'] as const)
			for (const [, example] of howToMeasure(unit).matchAll(/(\d[\d./ ]*\d)/g))
				expect([example, readLength(String(example), unit)]).not.toEqual([example, null])
	})
})

describe('there and back', () => {
	const signs = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞']

	test('every sixteenth from 1/16 to 400 inches, however it is written', () => {
		for (let n = 1; n <= 400 * 16; n++) {
			const cm = (n * 254 * 625) / 1_000_000
			const [whole, rest] = [n < 16 ? '' : String(Math.floor(n / 16)), n % 16]
			const tape = rest === 0 ? whole : `${whole} ${rest}/16`
			const eighth = rest % 2 === 0 ? `${whole}${signs[rest / 2]}"` : `${tape} in`
			for (const text of [String(n / 16), tape, eighth]) expect([text, readLength(text, 'in')]).toEqual([text, cm])
			expect(typedLength(cm, 'in')).toBe(String(n / 16))
		}
	})

	test('every millimetre to ten metres', () => {
		for (let mm = 1; mm <= 10_000; mm++) {
			const text = String(mm / 10)
			expect([readLength(text, 'cm'), readLength(`${mm} mm`, 'in')]).toEqual([mm / 10, mm / 10])
			expect(typedLength(mm / 10, 'cm')).toBe(text)
			// Shown in inches to four decimals, and nothing longer.
			expect(typedLength(mm / 10, 'in')).toMatch(/^\d+(\.\d{1,4})?$/)
		}
	})

	test('whatever is typed is a length or none, never a number that cannot be computed with', () => {
		fc.assert(
			fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[-0-9./ ½"a-z]{0,12}$/)), (typed) => {
				const cm = readLength(typed, 'in')
				expect(cm === null || Number.isFinite(cm)).toBe(true)
			}),
			{ numRuns: 2000 },
		)
	})
})
