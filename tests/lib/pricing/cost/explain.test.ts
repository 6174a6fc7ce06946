import { describe, expect, test } from 'vitest'
import { priceLine } from '@/lib/pricing/cost/line'
import { defaultRates } from '@/lib/pricing/rates'
import { cents } from '@/lib/units/cents'
import { line, words } from '../sample'

const birch = line('birch', 'fresh', 'branch', 14, 1840, 10)
const globes = line('globes', 'ornament', 'accent', 3, 5400, 6, { holding: 'lent' })
const lights = line('lights', 'light', 'string', 2, 2150, 1, { unit: 'string' })
const dear = { pack: { size: 8, cents: cents(1230), freightPercent: 12.5 } }

describe('the working of a line, word for word', () => {
	test.each([
		{ name: 'stems', of: birch, price: '14 stems × 1.10 × $18.40 ÷ 10 × 2.2', cost: null },
		{ name: 'one stem', of: { ...birch, count: 1 }, price: '1 stem × 1.10 × $18.40 ÷ 10 × 2.2', cost: null },
		{ name: 'freight', of: { ...birch, ...dear }, price: '14 stems × 1.10 × $12.30 × 1.125 ÷ 8 × 2.2', cost: null },
		{
			name: 'by weight',
			of: line('cedar', 'fresh', 'green', 2.4, 6850, 9.5, { unit: 'kg' }),
			price: '2.4 kg × 1.10 × $68.50 ÷ 9.5 × 2.2',
			cost: null,
		},
		{
			name: 'litres of a live kind',
			of: line('moss', 'live', 'none', 3, 1199, 7, { unit: 'litre' }),
			price: '3 litres × 1.05 × $11.99 ÷ 7 × 2',
			cost: null,
		},
		{ name: 'strings, of which none is lost', of: lights, price: '2 strings × $21.50 ÷ 1 × 1.8', cost: null },
		{ name: 'lent', of: globes, price: '3 pieces × 1.05 × $54.00 ÷ 6 ÷ 3 uses × 2', cost: null },
		{
			name: 'lent and written off',
			of: { ...globes, usesBefore: 3 },
			price: '3 pieces × 1.05 × $54.00 ÷ 6 ÷ 3 uses × 2',
			cost: 'written off after 3 uses',
		},
		{ name: 'own', of: { ...birch, holding: 'own' }, price: '14 stems, the client’s own', cost: null },
		{
			name: 'whole packs',
			of: { ...birch, onlyHere: true },
			price: '14 stems × 1.10 × $18.40 ÷ 10 × 2.2',
			cost: 'nobody else uses it: 2 × $18.40',
		},
		{
			name: 'whole packs with freight, lent',
			of: { ...globes, ...dear, count: 9, onlyHere: true },
			price: '9 pieces × 1.05 × $12.30 × 1.125 ÷ 8 ÷ 3 uses × 2',
			cost: 'nobody else uses it: 2 × $12.30 × 1.125 ÷ 3 uses',
		},
	] as const)('$name', ({ of, price, cost }) => {
		const { price: priceInWords, cost: costInWords } = priceLine(of, defaultRates, words)
		expect({ price: priceInWords, cost: costInWords }).toEqual({ price, cost })
	})

	test('a thing that serves one season is lent without a word of uses', () => {
		const once = { ...defaultRates, usesOfLife: { faux: 4, ornament: 1, light: 3 } }
		expect(priceLine(globes, once, words).price).toBe('3 pieces × 1.05 × $54.00 ÷ 6 × 2')
	})
})
