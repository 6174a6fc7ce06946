import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Taxed, taxLines, taxOn } from '@/lib/pricing/quote/tax'
import { cents, sum } from '@/lib/units/cents'
import { placeId } from '../sample'

const at = (place: number, plants: number, goods: number, labour: number, bill: Taxed['bill'] = 'apart'): Taxed => ({
	place: placeId(place),
	split: { plants: cents(plants), goods: cents(goods), labour: cents(labour) },
	bill,
})

const places = [
	{ place: placeId(1), milliPercent: 6000 },
	{ place: placeId(2), milliPercent: 7250 },
	{ place: placeId(3), milliPercent: 6000 },
	{ place: placeId(4), milliPercent: 0 },
]
const payer = { kind: 'business', netDays: 30, exemptCertificate: null } as const
const setting = (plants: boolean, goods: boolean, labour: boolean, how: 'stated separately' | 'taxed whole') =>
	({ taxable: { plants, goods, labour }, labour: how, basis: 'invoice', places }) as const

describe('what is taxed', () => {
	const pot = at(1, 10_000, 2000, 500)
	test.each([
		{
			name: 'plants and goods, labour stated separately',
			tax: setting(true, true, false, 'stated separately'),
			base: 12_000,
		},
		{ name: 'plants and goods, taxed whole', tax: setting(true, true, false, 'taxed whole'), base: 12_500 },
		{ name: 'plants free, goods taxed', tax: setting(false, true, false, 'stated separately'), base: 2000 },
		{ name: 'plants free, goods and their labour taxed', tax: setting(false, true, false, 'taxed whole'), base: 2500 },
		{ name: 'labour taxed as a class', tax: setting(false, false, true, 'stated separately'), base: 500 },
		{ name: 'all three classes', tax: setting(true, true, true, 'stated separately'), base: 12_500 },
		{ name: 'goods free, plants and labour taxed', tax: setting(true, false, true, 'taxed whole'), base: 10_500 },
	])('$name', ({ tax, base }) => {
		expect(taxLines([pot], { tax, payer })).toEqual([
			{ milliPercent: 6000, baseCents: base, cents: (base * 6) / 100, bill: 'apart' },
		])
	})

	test('nothing, where no class is taxed, even whole', () => {
		expect(taxLines([pot], { tax: setting(false, false, false, 'taxed whole'), payer })).toEqual([])
	})

	test('nothing at a place without a tax, and nothing for who is exempt', () => {
		const tax = setting(true, true, true, 'taxed whole')
		expect(taxLines([at(4, 800, 90, 7)], { tax, payer })).toEqual([])
		expect(taxLines([pot], { tax, payer: { ...payer, exemptCertificate: 'EX-4410' } })).toEqual([])
	})

	test('a place whose rate is not known is refused', () => {
		const tax = setting(true, true, false, 'stated separately')
		expect(() => taxLines([at(9, 800, 90, 7)], { tax, payer })).toThrow('tax: no rate is known for the place')
	})
})

describe('how it is rounded', () => {
	const tax = setting(true, true, false, 'stated separately')
	const lines = [at(1, 208, 0, 77), at(3, 0, 209, 0), at(2, 499, 0, 0, 'agreement'), at(1, 50, 0, 0, 'agreement')]

	test('on the invoice: one line for each bill and rate, places of one rate together', () => {
		expect(taxLines(lines, { tax, payer })).toEqual([
			{ milliPercent: 6000, baseCents: 50, cents: 3, bill: 'agreement' },
			{ milliPercent: 7250, baseCents: 499, cents: 36, bill: 'agreement' },
			{ milliPercent: 6000, baseCents: 417, cents: 25, bill: 'apart' },
		])
	})

	test('by the line: 12.48 and 12.54 cents are rounded before they are added', () => {
		const apart = taxLines(lines, { tax: { ...tax, basis: 'line' }, payer }).filter(({ bill }) => bill === 'apart')
		expect(apart).toEqual([{ milliPercent: 6000, baseCents: 417, cents: 12 + 13, bill: 'apart' }])
		const halves = [at(1, 0, 24, 0), at(1, 0, 24, 0), at(1, 0, 24, 0)]
		expect(taxLines(halves, { tax: { ...tax, basis: 'line' }, payer })).toMatchObject([{ cents: 3 }])
		expect(taxLines(halves, { tax, payer })).toMatchObject([{ cents: 4 }])
	})
})

describe('laws of tax', () => {
	const amounts = fc.array(fc.nat(500_000), { minLength: 1, maxLength: 12 })
	const rate = fc.integer({ min: 0, max: 15_000 })

	test('a cent more is never taxed less, and tax is within half a cent', () => {
		fc.assert(
			fc.property(fc.nat(10_000_000), rate, (base, milliPercent) => {
				const tax = taxOn(cents(base), milliPercent)
				expect(taxOn(cents(base + 1), milliPercent)).toBeGreaterThanOrEqual(tax)
				expect(Math.abs(2 * (tax * 100_000 - base * milliPercent))).toBeLessThanOrEqual(100_000)
			}),
			{ numRuns: 500 },
		)
	})

	test('by the line and on the invoice differ by half a cent a line at the most; the base is the same', () => {
		fc.assert(
			fc.property(amounts, (goods) => {
				const lines = goods.map((amount) => at(2, 0, amount, 0))
				const on = (basis: 'invoice' | 'line') =>
					taxLines(lines, { tax: { ...setting(true, true, false, 'stated separately'), basis }, payer })
				const [invoice, line] = [on('invoice'), on('line')]
				expect(sum(line.map(({ baseCents }) => baseCents))).toBe(sum(invoice.map(({ baseCents }) => baseCents)))
				const apart = sum(line.map((of) => of.cents)) - sum(invoice.map((of) => of.cents))
				expect(Math.abs(apart)).toBeLessThanOrEqual((goods.length + 1) / 2)
			}),
			{ numRuns: 300 },
		)
	})
})
