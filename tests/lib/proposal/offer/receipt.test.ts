import { describe, expect, test } from 'vitest'
import { take } from '@/lib/proposal/answer'
import { priceView } from '@/lib/proposal/offer/price-view'
import { type Approved, receipt } from '@/lib/proposal/offer/receipt'
import { day } from '@/lib/units/day'
import { containerId, money, offerOf, placeId } from '../sample'

const offer = offerOf()
const given: Approved = {
	reference: '2026-0012',
	on: day('2026-10-28'),
	by: 'by Ada Ninefold',
	option: 'a',
	places: {},
	extras: [],
	leftOut: [],
	purchaseOrder: '',
}
const rows = (more: Partial<Approved>) =>
	receipt(offer, { ...given, ...more })?.rows.map(({ label, value }) => [label, value])

describe('a receipt', () => {
	test('says for whom, who approved what and when', () => {
		expect(rows({})).toEqual([
			['Reference', '2026-0012'],
			['For', 'Ninefold Bakery, 1 Quay Lane, 2 Quay Lane'],
			['Approved', 'by Ada Ninefold, 28 October 2026'],
			['Palette', 'Copper and plum'],
			['Goes in', '16–\u206020 November'],
		])
	})

	test('and the purchase order, the extras and what is left out, where there are any', () => {
		const more = { extras: ['lights', 'wreath'], leftOut: [containerId(2)], purchaseOrder: 'PO 4471' }
		expect(rows(more)?.slice(3, 7)).toEqual([
			['Purchase order', 'PO 4471'],
			['Palette', 'Copper and plum'],
			['Extras', 'Wreath and String of lights'],
			['Left out', 'Right urn'],
		])
	})

	test('has every line of the price that was approved', () => {
		const chosen = { option: 'b', places: {}, extras: ['wreath'], leftOut: [containerId(2)] }
		const taken = take(offer, chosen)
		expect(receipt(offer, { ...given, ...chosen })?.price).toEqual(taken.ok && priceView(offer, taken.quote, money))
	})

	test('names each palette where places took different ones, and has the price of that', () => {
		const chosen = { option: 'a', places: { [placeId(2)]: 'b' }, extras: [], leftOut: [] }
		const taken = take(offer, chosen)
		const of = receipt(offer, { ...given, ...chosen })
		expect(of?.rows[3]).toEqual({ label: 'Palette', value: 'Copper and plum; Brass and navy at Side door' })
		expect(of?.price).toEqual(taken.ok && priceView(offer, taken.quote, money))
		expect(of?.price.total).not.toBe(receipt(offer, given)?.price.total)
	})

	test('is none for a palette that was not offered', () => {
		expect(receipt(offer, { ...given, option: 'z' })).toBeUndefined()
		expect(receipt(offer, { ...given, option: null })).toBeUndefined()
		expect(receipt(offer, { ...given, places: { [placeId(2)]: 'z' } })).toBeUndefined()
	})
})
