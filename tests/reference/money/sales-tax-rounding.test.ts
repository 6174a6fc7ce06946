import fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { taxLines, taxOn } from '@/lib/pricing/quote/tax'
import { cents } from '@/lib/units/cents'
import { placeId } from '../../lib/pricing/sample'

// Streamlined Sales and Use Tax Agreement, section 324, as enacted in Rhode Island Gen. Laws 44-18.1-25, North Dakota
// Century Code 57-39.4-25 and Kansas Statutes 79-3676: tax is carried to the third decimal, and rounded up to the next
// cent when that is greater than four; by the item or on the invoice, as the seller elects.
// The states publish no amounts: these were worked from the rule by hand, in exact decimals.
const rows = [
	{ taxable: 1999, percent: '7.25', exact: '1.449275', tax: 145 },
	{ taxable: 699, percent: '6.5', exact: '0.45435', tax: 45 },
	{ taxable: 1050, percent: '6.5', exact: '0.6825', tax: 68 },
	{ taxable: 14_950, percent: '7.0', exact: '10.465', tax: 1047 },
	{ taxable: 33, percent: '6', exact: '0.0198', tax: 2 },
	{ taxable: 8999, percent: '10.25', exact: '9.223975', tax: 922 },
	{ taxable: 2449, percent: '7.35', exact: '1.800015', tax: 180 },
	{ taxable: 62, percent: '7.25', exact: '0.04495', tax: 4 },
]
const milli = (percent: string) => Math.round(Number(percent) * 1000)

const payer = { kind: 'business', netDays: 15, exemptCertificate: null } as const
const taxed = { taxable: { plants: true, goods: true, labour: true }, labour: 'stated separately' } as const
const at = placeId(5)
const sold = (amount: number) =>
	({ place: at, bill: 'apart', split: { plants: cents(0), goods: cents(amount), labour: cents(0) } }) as const
const taxOf = (amounts: readonly number[], percent: string, basis: 'invoice' | 'line') => {
	const tax = { ...taxed, basis, places: [{ place: at, milliPercent: milli(percent) }] }
	return taxLines(amounts.map(sold), { tax, payer }).map((line) => line.cents)
}

/** The rule to the letter, on the written digits: cut after the third decimal, look at it, raise the second or leave it. */
function toTheLetter(taxable: number, milliPercent: number): number {
	const thousandths = new Fraction(taxable, 100).mul(milliPercent, 100_000).mul(1000).floor()
	const [whole, third] = [thousandths.div(10).floor(), thousandths.mod(10)]
	return Number(whole.add(third.gt(4) ? 1 : 0).valueOf())
}

describe('section 324', () => {
	test.each(rows)('$taxable cents at $percent % is $exact, so $tax cents', ({ taxable, percent, exact, tax }) => {
		expect(new Fraction(taxable, 100).mul(percent).div(100).equals(exact)).toBe(true)
		expect(toTheLetter(taxable, milli(percent))).toBe(tax)
		expect(taxOn(cents(taxable), milli(percent))).toBe(tax)
		expect(taxOf([taxable], percent, 'invoice')).toEqual([tax])
		expect(taxOf([taxable], percent, 'line')).toEqual([tax])
	})

	test('three lines of 4.99 at 7.25 %: 0.36 each by the line, 1.09 on the invoice', () => {
		expect(taxOf([499, 499, 499], '7.25', 'line')).toEqual([3 * 36])
		expect(taxOf([499, 499, 499], '7.25', 'invoice')).toEqual([109])
	})

	test('to the letter, for any amount and rate', () => {
		const amount = fc.nat(10_000_000)
		const rate = fc.integer({ min: 0, max: 15_000 })
		fc.assert(
			fc.property(amount, rate, (taxable, milliPercent) => {
				expect(taxOn(cents(taxable), milliPercent)).toBe(toTheLetter(taxable, milliPercent))
			}),
			{ numRuns: 1000 },
		)
	})

	test('to the letter, at every exact half cent', () => {
		// 0.50 at 1 %, 3 %, 5 % … is half a cent over a whole one; so is each multiple of it by an odd number.
		for (let odd = 1; odd < 400; odd += 2)
			for (const milliPercent of [1000, 3000, 5000, 7000]) {
				const half = 50 * odd
				expect(taxOn(cents(half), milliPercent)).toBe(toTheLetter(half, milliPercent))
				expect(taxOn(cents(half), milliPercent)).toBe((half * milliPercent + 50_000) / 100_000)
			}
	})
})
