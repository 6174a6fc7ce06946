import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { CostBook } from '@/lib/pricing/cost-book'
import { price } from '@/lib/pricing/price'
import type { PriceList } from '@/lib/pricing/price-list'
import { everything } from '@/lib/pricing/quote/choice'
import { type Costing, costing } from '@/lib/pricing/quote/costing'
import { type Quote, quote } from '@/lib/pricing/quote/quote'
import { jobs, runs } from './arbitrary'
import { bare, extra, job, placeId, visit, words } from './sample'

const two = job({
	visits: [visit(2, { taxMilliPercent: 7250 }), visit(1)],
	containers: [bare(7, { place: placeId(2) }), bare(4, { isNew: true, soilL: 20 })],
	extras: [extra('wreath'), extra('garland')],
})

describe('the price list', () => {
	test('is in the order of ids, not of writing', () => {
		const { list } = price(two, words)
		expect(list.parts.map((part) => [part.is, part.name])).toEqual([
			['container', 'pot 4'],
			['container', 'pot 7'],
			['soil', 'pot 4'],
			['disposal', 'pot 7'],
			['travel', 'door 1'],
			['travel', 'door 2'],
			['design', 'Design'],
			['extra', 'extra garland'],
			['extra', 'extra wreath'],
		])
		expect(list.tax.places).toEqual([
			{ place: placeId(1), milliPercent: 6000 },
			{ place: placeId(2), milliPercent: 7250 },
		])
	})

	test('carries what a total follows from', () => {
		const { list } = price({ ...two, agreement: { is: 'discount', percent: 12.5 } }, words)
		expect(list).toMatchObject({ currency: 'USD', ratesVersion: 3, discountPercent: 12.5, minimumVisitCents: null })
		expect(list).toMatchObject({ depositPercent: 50, isUnderAgreement: true, payer: two.payer })
		expect(price(two, words).list).toMatchObject({
			discountPercent: 0,
			minimumVisitCents: 17_500,
			isUnderAgreement: false,
		})
	})

	test('of a quoted season its own proposal bills every part', () => {
		const { list } = price({ ...two, agreement: { is: 'discount', percent: 5 } }, words)
		expect(new Set(list.parts.map(({ bill }) => bill))).toEqual(new Set(['apart']))
	})

	test('every part has its costed twin', () => {
		const { list, costs } = price(two, words)
		expect(costs.parts.map(({ is, name, place }) => [is, name, place])).toEqual(
			list.parts.map(({ is, name, place }) => [is, name, place]),
		)
	})
})

describe('a client never receives a cost', () => {
	test('no key of the price list or the quote speaks of cost, margin, wage, markup or minutes', () => {
		fc.assert(
			fc.property(jobs, (of) => {
				const { list } = price(of, words)
				for (const seen of [list, quote(list, everything)])
					expect(JSON.stringify(seen)).not.toMatch(
						/"[^"]*(cost|margin|wage|markup|minutes|gross|rounding|lines":\[\{"name)[^"]*":/i,
					)
			}),
			runs,
		)
	})

	test('the studio’s side does, so that the look-out sees something', () => {
		const { list, costs } = price(two, words)
		expect(JSON.stringify(costs)).toMatch(/"costCents":/)
		expect(JSON.stringify(costing(list, costs, everything))).toMatch(/"marginPercent":/)
	})

	test('a costing or a cost book is refused where a quote or a price list is wanted', () => {
		const shown = (of: Quote | PriceList): string => of.is
		const { list, costs } = price(two, words)
		const inside: Costing = costing(list, costs, everything)
		const book: CostBook = costs
		// @ts-expect-error a costing is no quote
		expect(shown(inside)).toBe('costing')
		// @ts-expect-error a cost book is no price list
		expect(shown(book)).toBe('cost book')
		// @ts-expect-error nor is a costing with a quote's name
		expect(shown({ ...inside, is: 'quote' })).toBe('quote')
		expect(shown(quote(list, everything))).toBe('quote')
	})
})
