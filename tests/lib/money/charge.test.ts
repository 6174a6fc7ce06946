import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { apartOf, type Charge, chargeCents, part, without } from '@/lib/money/charge'
import { cents, sum } from '@/lib/units/cents'
import { charge, quoteOf } from './sample'

const whole = charge(10_000, [6000, 8000, 480], [7250, 2000, 145])

describe('a part of a charge', () => {
	test.each([
		{ name: 'half of it', amount: 5313, taken: charge(5000, [6000, 4000, 240], [7250, 1000, 73]) },
		{ name: 'nothing', amount: 0, taken: charge(0, [6000, 0, 0], [7250, 0, 0]) },
		{ name: 'all of it', amount: 10_625, taken: whole },
		{ name: 'a cent goes to the largest part', amount: 1, taken: charge(1, [6000, 1, 0], [7250, 0, 0]) },
	])('$name', ({ amount, taken }) => {
		expect(part(whole, cents(amount)).taken).toEqual(taken)
		expect(chargeCents(taken)).toBe(amount)
	})

	test.each([[10_626], [-1]])('%i is no part of it', (amount) => {
		expect(() => part(whole, cents(amount))).toThrow(`${amount} is no part of 10625`)
	})

	test('a charge of other rates is not in it', () => {
		expect(() => without(whole, charge(1, [6000, 1, 0]))).toThrow('rates of tax')
		expect(() => without(whole, charge(1, [6000, 1, 0], [5000, 1, 0]))).toThrow('no tax at 7250')
	})
})

test('what a quote asks for apart is not what the agreement asks for', () => {
	const asked = { kind: 'household', netDays: 15, depositPercent: 50, agreed: 9100, apart: whole } as const
	expect(apartOf(quoteOf(asked))).toEqual(whole)
})

describe('laws of a part', () => {
	const amount = fc.nat(3_000_000)
	const charges: fc.Arbitrary<Charge> = fc
		.tuple(amount, fc.uniqueArray(fc.tuple(fc.nat(15_000), amount, amount), { maxLength: 3, selector: ([at]) => at }))
		.map(([net, tax]) => charge(net, ...tax))
	const cut = fc.array(fc.nat(1000), { minLength: 1, maxLength: 5 })

	test('parts taken one after the other are exact, sum to the whole in every figure, and none is below zero', () => {
		fc.assert(
			fc.property(charges, cut, (of, weights) => {
				let left = of
				const parts = weights.map((weight, index) => {
					const isLast = index === weights.length - 1
					const open = chargeCents(left)
					const asked = isLast ? open : cents(Math.floor((open * weight) / 1000))
					const split = part(left, asked)
					expect(chargeCents(split.taken)).toBe(asked)
					left = split.left
					return split.taken
				})
				const figures = (each: Charge) => [each.netCents, ...each.tax.flatMap((tax) => [tax.baseCents, tax.cents])]
				for (const each of parts) for (const figure of figures(each)) expect(figure).toBeGreaterThanOrEqual(0)
				const summed = figures(of).map((_, at) => sum(parts.map((each) => cents(figures(each)[at] ?? 0))))
				expect(summed).toEqual(figures(of))
			}),
			{ numRuns: 500 },
		)
	})
})
