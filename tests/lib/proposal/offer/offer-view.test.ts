import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { quote } from '@/lib/pricing/quote/quote'
import { take } from '@/lib/proposal/answer'
import type { Draft } from '@/lib/proposal/draft'
import { offerView } from '@/lib/proposal/offer/offer-view'
import type { Picked } from '@/lib/proposal/picked/picked-in'
import { anyText } from '../../units/arbitrary'
import { containerId, draft, first, money, offerOf, placeId } from '../sample'

const offer = offerOf()
const nothing: Picked = { option: null, places: {}, extras: [], leftOut: [] }
const view = (picked: Partial<Picked> = {}, of = offer) => offerView(of, undefined, { ...nothing, ...picked })
const [left, right, box] = [1, 2, 3].map(String).map((n) => containerId(Number(n)))
const places = [placeId(1), placeId(2)]
const [front = '', side = ''] = places
const onlyOne = offerOf({ ...draft, options: [first(draft.options)] })
const out = (...ids: (string | undefined)[]) => ids.filter((each) => each !== undefined)

describe('with several palettes', () => {
	test('none is picked beforehand: no price, nothing on the wall, nothing to send', () => {
		const of = view()
		expect(of.options.map(({ isOnWall }) => isOnWall)).toEqual([false, false])
		expect([of.onWall, of.price, of.picked]).toEqual([undefined, undefined, undefined])
		expect(of.pots.every(({ layers }) => layers.length === 0)).toBe(true)
	})

	test('each tells its total all the same', () => {
		const totals = view().options.map(({ total }) => total)
		expect(totals).toEqual(
			offer.options.map(({ prices }) => money(quote(prices, { extras: [], leftOut: [] }).totalCents)),
		)
		expect(new Set(totals).size).toBe(2)
	})

	test('one is picked by its key', () => {
		const of = view({ option: 'b' })
		expect(of.onWall?.name).toBe('Brass and navy')
		expect(of.picked).toEqual({ option: 'b', places: {}, extras: [], leftOut: [] })
		expect(of.price?.total).toBe(of.onWall?.total)
		expect(of.pots.map(({ layers }) => layers.map(({ words }) => words))).toEqual([
			['Birch', 'Noble fir'],
			['Birch', 'Noble fir'],
			['Noble fir'],
		])
	})

	test('pots that hold the same are told once', () => {
		expect(view({ option: 'b' }).potGroups.map(({ names }) => names)).toEqual([['Left urn', 'Right urn'], ['Long box']])
		expect(view({ option: 'b' }).potGroups.map(({ words }) => words)).toEqual([
			['urn, 16 in across and 20 in high', 'round, 18 in across and 20 in high'],
			['window box, 36 in by 8 in and 9 in high'],
		])
		expect(view({ option: 'a' }).potGroups.map(({ names }) => names)).toEqual([
			['Left urn'],
			['Right urn'],
			['Long box'],
		])
	})
})

describe('with one palette', () => {
	test('it is on the wall, whatever the address says', () => {
		for (const option of [null, 'a', 'b', 'zzz'])
			expect(view({ option }, onlyOne)).toMatchObject({ onWall: { key: 'a' }, picked: { option: 'a' } })
	})
})

describe('with several places', () => {
	const mixed = (more: Partial<Picked> = {}) => view({ option: 'a', places: { [side]: 'b' }, ...more })

	test('each tells what it takes, and each palette where it stands', () => {
		expect(mixed().places).toEqual([
			{ id: front, name: 'Front door', option: 'a' },
			{ id: side, name: 'Side door', option: 'b' },
		])
		expect(mixed().options.map(({ isOnWall, at }) => [isOnWall, at])).toEqual([
			[true, ['Front door']],
			[false, ['Side door']],
		])
		expect(mixed().palette).toBe('Copper and plum; Brass and navy at Side door')
		expect(mixed().picked).toEqual({ option: 'a', places: { [side]: 'b' }, extras: [], leftOut: [] })
	})

	test('while they take the same, none is told apart; while nothing is picked, they take none', () => {
		const of = view({ option: 'b', places: { [side]: 'b' } })
		expect([of.palette, of.picked?.places]).toEqual(['Brass and navy', {}])
		expect(of.options.flatMap(({ at }) => at)).toEqual([])
		expect(view({ places: { [side]: 'b' } })).toMatchObject({ palette: undefined, chosen: { places: {} } })
		expect(view().places.map(({ option }) => option)).toEqual([null, null])
	})

	test('what is in each pot, the total and the cautions follow; a palette tells what it would come to everywhere', () => {
		expect(mixed().pots.map(({ layers }) => layers.map(({ words }) => words).length)).toEqual([2, 2, 1])
		expect(mixed().pots[2]).toEqual(view({ option: 'b' }).pots[2])
		expect(mixed().pots[0]).toEqual(view({ option: 'a' }).pots[0])
		expect(mixed().options.map(({ total }) => total)).toEqual(view().options.map(({ total }) => total))
		expect(mixed().options.map(({ total }) => total)).not.toContain(mixed().price?.total)
		expect(view({ option: 'a' }).cautions.join()).toMatch(/Holly/)
		expect(mixed().cautions.join()).not.toMatch(/Holly/)
	})

	test('of a place that is left out nothing is said', () => {
		const of = mixed({ leftOut: out(box) })
		expect(of.places.map(({ id }) => id)).toEqual([front])
		expect([of.palette, of.picked?.places]).toEqual(['Copper and plum', {}])
		expect(of.picked?.leftOut).toEqual([box])
	})

	test('what is no palette or no place is passed over', () => {
		const of = view({ option: 'a', places: { [side]: 'zzz', [placeId(9)]: 'b', toString: 'b' } })
		expect(of.picked?.places).toEqual({})
	})
})

describe('what was picked', () => {
	test('extras and what is left out change every total', () => {
		const picked = { extras: ['wreath'], leftOut: out(box) }
		const of = view({ option: 'a', ...picked })
		expect(of.extras.map(({ key, isAdded }) => [key, isAdded])).toEqual([
			['wreath', true],
			['lights', false],
		])
		expect(of.pots.map(({ isOut }) => isOut)).toEqual([false, false, true])
		expect(of.potGroups.map(({ names }) => names)).toEqual([['Left urn'], ['Right urn']])
		for (const [n, { key }] of offer.options.entries()) {
			const taken = take(offer, { option: key, places: {}, extras: ['wreath'], leftOut: [containerId(3)] })
			expect(of.options[n]?.total).toBe(taken.ok && money(taken.quote.totalCents))
		}
		expect(of.options[0]?.total).not.toBe(view().options[0]?.total)
	})

	test('an extra tells what it adds, before tax', () => {
		const parts = first(offer.options).prices.parts
		const adds = parts.flatMap((part) => (part.is === 'extra' ? [[part.extra, money(part.cents)]] : []))
		expect(
			view()
				.extras.map(({ key, price }) => [key, price])
				.toSorted(),
		).toEqual(adds.toSorted())
	})

	test.each<{ name: string; picked: Partial<Picked>; is: Partial<Picked> }>([
		{ name: 'an extra that is not offered', picked: { extras: ['garland', 'wreath'] }, is: { extras: ['wreath'] } },
		{
			name: 'a container that belongs to the design',
			picked: { leftOut: out(left, right) },
			is: { leftOut: out(right) },
		},
		{ name: 'what is no id', picked: { leftOut: ['x', '', '__proto__', '../'] }, is: { leftOut: [] } },
		{ name: 'the same extra thrice', picked: { extras: ['wreath', 'wreath', 'wreath'] }, is: { extras: ['wreath'] } },
		{
			name: 'an extra where everything is left out: all of it is put back',
			picked: { extras: ['lights', 'wreath'], leftOut: out(box) },
			is: { extras: [], leftOut: [] },
		},
	])('garbage is passed over: $name', ({ picked, is }) => {
		expect(view({ option: 'a', ...picked }).picked).toEqual({ option: 'a', places: {}, extras: [], leftOut: [], ...is })
	})

	test('everything left out is put back', () => {
		const allMay: Draft = { ...draft, containers: draft.containers.map((each) => ({ ...each, mayLeaveOut: true })) }
		const of = view({ option: 'a', leftOut: out(left, right, box) }, offerOf(allMay))
		expect(of.picked?.leftOut).toEqual([])
		expect(of.pots.every(({ isOut }) => !isOut)).toBe(true)
	})

	test('a palette that is not offered is none', () => {
		expect(view({ option: 'zzz', extras: ['wreath'] })).toMatchObject({ onWall: undefined, picked: undefined })
	})

	test('whatever an address holds, what can be sent from the page would be taken, at the price shown', () => {
		const texts = fc.oneof(fc.constantFrom('a', 'b', 'wreath', 'lights', ...out(left, right, box)), anyText(5))
		const pickeds = fc.record({
			option: fc.option(texts),
			places: fc.dictionary(fc.oneof(fc.constantFrom(...places), anyText(5)), texts),
			extras: fc.array(texts),
			leftOut: fc.array(texts),
		})
		fc.assert(
			fc.property(pickeds, (picked) => {
				const { picked: wanted, price } = offerView(offer, undefined, picked)
				if (wanted === undefined) {
					expect(['a', 'b']).not.toContain(picked.option)
					return
				}
				const taken = take(offer, wanted)
				expect(taken.ok && money(taken.quote.totalCents)).toBe(price?.total)
			}),
			{ numRuns: 500 },
		)
	})
})

describe('the page says', () => {
	test('its dates in words', () => {
		expect(view()).toMatchObject({
			answerBy: 'Fri 30 October',
			answerByLong: 'Friday 30 October',
			goesIn: '16–\u206020 November',
		})
	})

	test('what changed since the revision before, when there was one', () => {
		const before = offerOf({ ...draft, title: 'Winter' })
		expect(offerView(offer, before, nothing).changes).toEqual([
			{ of: 'Title', was: 'Winter', is: 'Winter at the bakery' },
		])
		expect(view().changes).toEqual([])
	})
})
