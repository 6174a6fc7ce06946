import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { marginBeside } from '@/lib/agreement/renewal/margin-beside'
import { cents } from '@/lib/units/cents'

const amount = fc.integer({ min: 1_000, max: 5_000_000 }).map(cents)
const tenths = fc.integer({ min: -500, max: 950 })

describe('the margin of last year beside that at the new price', () => {
	test('by hand: 1,000.00 that cost 550.00, and 40.00 more for the same', () => {
		const brought = { valueCents: cents(100_000), marginTenths: 450 }
		// 1 − 550 ÷ 1,040 = 47.1 %
		expect(marginBeside(brought, cents(4_000))).toEqual({ was: 45, is: 47.1 })
	})

	test('is not known where nothing was approved, or its margin is not', () => {
		expect(marginBeside(undefined, cents(4_000))).toBeNull()
		expect(marginBeside({ valueCents: cents(100_000), marginTenths: null }, cents(4_000))).toBeNull()
	})

	test('stays at the same price, within the tenth that was kept', () => {
		fc.assert(
			fc.property(amount, tenths, (valueCents, marginTenths) => {
				const { was, is } = marginBeside({ valueCents, marginTenths }, cents(0)) ?? { was: 0, is: null }
				expect(Math.abs((is ?? Number.NaN) - was)).toBeLessThan(0.11)
			}),
		)
	})

	test('never falls where the price rises, and never rises where it falls', () => {
		fc.assert(
			fc.property(amount, tenths, amount, (valueCents, marginTenths, change) => {
				const of = (difference: number) =>
					marginBeside({ valueCents, marginTenths }, cents(difference))?.is ?? Number.NaN
				const same = of(0)
				expect(of(change)).toBeGreaterThanOrEqual(same)
				if (change < valueCents) expect(of(-change)).toBeLessThanOrEqual(same)
			}),
		)
	})

	test('there is none of a job without a price', () => {
		expect(marginBeside({ valueCents: cents(5_000), marginTenths: 100 }, cents(-5_000))).toEqual({ was: 10, is: null })
	})
})
