import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { instalmentCharge, isAgreedTaxed } from '@/lib/money/bills/instalment-charge'
import { defaultRates } from '@/lib/pricing/rates'
import { cents } from '@/lib/units/cents'
import { charge } from '../sample'

const at = (containers: number, milliPercent: number) => ({ containers, milliPercent })

describe('the tax of an instalment', () => {
	test.each([
		{ name: 'at one place', places: [at(3, 6000)], is: charge(10_033, [6000, 10_033, 602]) },
		{
			name: 'at two, by their containers',
			places: [at(2, 7250), at(1, 6000)],
			is: charge(10_033, [6000, 3344, 201], [7250, 6689, 485]),
		},
		{
			name: 'at two of one rate, one line',
			places: [at(2, 6000), at(1, 6000)],
			is: charge(10_033, [6000, 10_033, 602]),
		},
		{ name: 'none where the rate is nothing', places: [at(1, 0), at(1, 6000)], is: charge(10_033, [6000, 5016, 301]) },
		{
			name: 'none at a place without a named container',
			places: [at(0, 9000), at(4, 6000)],
			is: charge(10_033, [6000, 10_033, 602]),
		},
	])('$name', ({ places, is }) => {
		expect(instalmentCharge(cents(10_033), { isTaxed: true, places })).toEqual(is)
	})

	test('none where nothing of it is taxed', () => {
		expect(instalmentCharge(cents(10_033), { isTaxed: false, places: [at(1, 6000)] })).toEqual(charge(10_033))
	})

	test('on all of it, where the studio taxes any class', () => {
		const taxing = (plants: boolean, goods: boolean, labour: boolean) =>
			isAgreedTaxed({ tax: { ...defaultRates.tax, taxable: { plants, goods, labour } } })
		expect([taxing(false, false, false), taxing(true, false, false), taxing(false, false, true)]).toEqual([
			false,
			true,
			true,
		])
	})

	test('the bases are the amount, and each tax is that of its rate on its base', () => {
		const place = fc.record({
			containers: fc.integer({ min: 1, max: 9 }),
			milliPercent: fc.integer({ min: 1, max: 12_000 }),
		})
		fc.assert(
			fc.property(fc.nat(2_000_000), fc.array(place, { minLength: 1, maxLength: 5 }), (net, places) => {
				const { netCents, tax } = instalmentCharge(cents(net), { isTaxed: true, places })
				expect([netCents, tax.reduce((all, { baseCents }) => all + baseCents, 0)]).toEqual([net, net])
				for (const { milliPercent, baseCents, cents: amount } of tax)
					expect(Math.abs(amount * 100_000 - baseCents * milliPercent)).toBeLessThanOrEqual(50_000)
			}),
		)
	})
})
