import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { priceLine } from '@/lib/pricing/cost/line'
import { marginPercent } from '@/lib/pricing/quote/costing'
import { defaultRates } from '@/lib/pricing/rates'
import { line, words } from '../lib/pricing/sample'

// Markup and gross profit: the chart at brrinc.org, which gives whole per cents, some rounded and some cut; the
// decimals are margin = markup ÷ (1 + markup), worked by hand. Mechanics lose nothing, so 100.00 of them cost 100.00.
const rows = [
	{ markup: 25, published: 20, margin: 20 },
	{ markup: 33, published: 25, margin: 24.8 },
	{ markup: 40, published: 28, margin: 28.6 },
	{ markup: 50, published: 33, margin: 33.3 },
	{ markup: 75, published: 43, margin: 42.9 },
	{ markup: 100, published: 50, margin: 50 },
	{ markup: 150, published: 60, margin: 60 },
	{ markup: 200, published: 67, margin: 66.7 },
	{ markup: 300, published: 75, margin: 75 },
	{ markup: 15, published: null, margin: 13 },
]

const sold = (costCents: number, markup: number) => {
	const rates = { ...defaultRates, markup: { ...defaultRates.markup, mechanics: (100 + markup) / 100 } }
	return priceLine(line('stakes', 'mechanics', 'none', 1, costCents, 1), rates, words)
}

describe('markup to margin', () => {
	test.each(rows)('a markup of $markup % leaves $margin %', ({ markup, published, margin }) => {
		const { costCents, priceCents } = sold(10_000, markup)
		expect([costCents, priceCents]).toEqual([10_000, 10_000 + 100 * markup])
		expect(marginPercent(priceCents, costCents)).toBe(margin)

		const exact = new Fraction(markup).div(100 + markup).mul(100)
		expect(exact.sub(String(margin)).abs().lte('0.05')).toBe(true)
		if (published !== null) expect([exact.floor().valueOf(), exact.ceil().valueOf()]).toContain(published)
	})

	test('the worked example: 3.00 at 50 % sells at 4.50 and leaves 33 %', () => {
		const { costCents, priceCents } = sold(300, 50)
		expect(priceCents).toBe(450)
		expect(Math.floor(marginPercent(priceCents, costCents) ?? 0)).toBe(33)
	})
})
