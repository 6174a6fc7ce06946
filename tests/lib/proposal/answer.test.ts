import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { quote } from '@/lib/pricing/quote/quote'
import { take, type Wanted } from '@/lib/proposal/answer'
import type { Draft } from '@/lib/proposal/draft'
import { keysOf, paletteAt, pricesOf } from '@/lib/proposal/picked/palettes'
import { cents } from '@/lib/units/cents'
import { containerId, draft, first, offerOf, placeId } from './sample'

const offer = offerOf()
const wanted = (more: Partial<Wanted> = {}): Wanted => ({ option: 'a', places: {}, extras: [], leftOut: [], ...more })
const [left, right, box, foreign] = [1, 2, 3, 9].map(containerId)
const allMay: Draft = { ...draft, containers: draft.containers.map((each) => ({ ...each, mayLeaveOut: true })) }
const [front, side] = [placeId(1), placeId(2)]
const out = (...containers: (typeof left)[]) => containers.filter((each) => each !== undefined)

describe('what a client may take', () => {
	test.each<{ name: string; more: Partial<Wanted> }>([
		{ name: 'a palette', more: {} },
		{ name: 'the other palette', more: { option: 'b' } },
		{ name: 'both extras', more: { extras: ['wreath', 'lights'] } },
		{ name: 'an extra, without a container of the same door', more: { extras: ['wreath'], leftOut: out(right) } },
		{ name: 'without the other door', more: { extras: ['wreath'], leftOut: out(box) } },
		{ name: 'without all that may be left out', more: { leftOut: out(right, box) } },
	])('$name', ({ more }) => {
		const taken = take(offer, wanted(more))
		const option = offer.options.find(({ key }) => key === (more.option ?? 'a'))
		expect(taken).toMatchObject({ ok: true, choice: { extras: more.extras ?? [], leftOut: more.leftOut ?? [] } })
		expect(taken.ok && taken.option).toBe(option)
		expect(taken.ok && taken.quote).toEqual(option && quote(option.prices, { extras: [], leftOut: [], ...more }))
	})

	test('the same thing twice is taken once', () => {
		const twice = take(offer, wanted({ extras: ['wreath', 'wreath'], leftOut: out(box, box) }))
		expect(twice).toEqual(take(offer, wanted({ extras: ['wreath'], leftOut: out(box) })))
		expect(twice.ok && twice.choice).toEqual({ extras: ['wreath'], leftOut: [box] })
	})
})

describe('another palette for a place', () => {
	const said = (more: Partial<Wanted>, of = offer) => {
		const taken = take(of, wanted(more))
		if (!taken.ok) return taken.why
		return [taken.option.key, [...taken.places].map(([id, { key }]) => [id, key])]
	}

	test.each<{ name: string; more: Partial<Wanted>; is: unknown }>([
		{ name: 'at the second', more: { places: { [side]: 'b' } }, is: ['a', [[side, 'b']]] },
		{ name: 'the same as everywhere says nothing', more: { places: { [side]: 'a' } }, is: ['a', []] },
		{ name: 'the whole is what the first takes', more: { places: { [front]: 'b' } }, is: ['b', [[side, 'a']]] },
		{ name: 'both in another are that one whole', more: { places: { [front]: 'b', [side]: 'b' } }, is: ['b', []] },
		{ name: 'one that is left out has none', more: { option: 'b', leftOut: out(box) }, is: ['b', []] },
	])('$name', ({ more, is }) => {
		expect(said(more)).toEqual(is)
	})

	test('where everything of the first is left out the whole is what the second takes', () => {
		const more = { places: { [side]: 'b' }, leftOut: out(left, right) }
		expect(said(more, offerOf(allMay))).toEqual(['b', []])
	})

	test('each place at the price of its own palette, what comes with a visit once', () => {
		const taken = take(offer, wanted({ places: { [side]: 'b' } }))
		const [a, b] = offer.options.map(({ prices }) => quote(prices, { extras: [], leftOut: [] }))
		const at = (of: typeof a, place: string) => of?.lines.filter((line) => line.place === place)
		expect(taken.ok && taken.quote.lines.filter(({ place }) => place === front)).toEqual(at(a, front))
		expect(taken.ok && taken.quote.lines.filter(({ place }) => place === side)).toEqual(at(b, side))
		expect(at(a, side)).not.toEqual(at(b, side))
	})
})

describe('what is not offered', () => {
	test.each<{ name: string; more: Partial<Wanted>; why: string }>([
		{ name: 'a palette of another proposal', more: { option: 'c' }, why: 'that palette is not offered' },
		{ name: 'a palette by its name', more: { option: 'Brass and navy' }, why: 'that palette is not offered' },
		{ name: 'no palette', more: { option: '' }, why: 'that palette is not offered' },
		{ name: 'an extra of another proposal', more: { extras: ['garland'] }, why: 'that extra is not offered' },
		{ name: 'one that is, and one that is not', more: { extras: ['wreath', 'x'] }, why: 'that extra is not offered' },
		{
			name: 'a palette that is not, at a place',
			more: { places: { [side]: 'z' } },
			why: 'that palette is not offered',
		},
		{
			name: 'a place of another client',
			more: { places: { [placeId(9)]: 'b' } },
			why: 'that place is not in the design',
		},
		{ name: 'a place by its name', more: { places: { 'Side door': 'b' } }, why: 'that place is not in the design' },
		{
			name: 'a palette where everything is left out',
			more: { places: { [side]: 'b' }, leftOut: out(box) },
			why: 'that palette belongs where everything is left out',
		},
		{
			name: 'a container that belongs to the design',
			more: { leftOut: out(left) },
			why: 'that container may not be left out',
		},
		{
			name: 'a container of another client',
			more: { leftOut: out(foreign) },
			why: 'that container may not be left out',
		},
		{
			name: 'an extra where everything is left out',
			more: { extras: ['lights'], leftOut: out(box) },
			why: 'that extra belongs where everything is left out',
		},
	])('$name', ({ more, why }) => {
		expect(take(offer, wanted(more))).toEqual({ ok: false, why })
	})

	test('nothing at all, though each container may be left out', () => {
		expect(take(offerOf(allMay), wanted({ leftOut: out(left, right, box) }))).toEqual({
			ok: false,
			why: 'nothing would be left',
		})
		expect(take(offerOf(allMay), wanted({ leftOut: out(left, right) })).ok).toBe(true)
	})

	test('leaving out what the agreement’s fixed price pays for', () => {
		const fixed: Draft = {
			...allMay,
			agreement: { is: 'fixed', cents: cents(95_000), containers: out(left, right) },
		}
		expect(take(offerOf(fixed), wanted({ leftOut: out(right) }))).toMatchObject({
			why: 'that container may not be left out',
		})
		expect(take(offerOf(fixed), wanted({ leftOut: out(box) })).ok).toBe(true)
	})
})

/** Places where something stays. */
const standing = ({ containers }: typeof offer, leftOut: readonly string[]) =>
	containers.filter(({ id }) => !leftOut.includes(id)).map(({ place }) => place)

describe('laws of taking', () => {
	const some = <T>(of: readonly T[]) => fc.array(fc.constantFrom(...of), { maxLength: 4 })
	const wants = fc.record({
		option: fc.constantFrom('a', 'b', 'c', '__proto__'),
		places: fc.dictionary(fc.constantFrom(front, side, placeId(9)), fc.constantFrom('a', 'b', 'b', 'a', 'z')),
		extras: some(['wreath', 'lights', 'garland', 'toString']),
		leftOut: some(out(left, right, box, foreign)),
	})
	const free = offerOf(allMay)
	const offers = [offer, free, offerOf({ ...allMay, agreement: { is: 'discount', percent: 12.5 } })]
	/** One of each refusal, which dice may leave out. */
	const refusals: [Wanted, typeof offer][] = [
		[wanted({ option: 'c' }), offer],
		[wanted({ extras: ['garland'] }), offer],
		[wanted({ places: { [placeId(9)]: 'b' } }), offer],
		[wanted({ places: { [side]: 'b' }, leftOut: out(box) }), offer],
		[wanted({ leftOut: out(left) }), offer],
		[wanted({ extras: ['lights'], leftOut: out(box) }), offer],
		[wanted({ leftOut: out(left, right, box) }), free],
	]

	test('it is priced from the frozen lists, or refused by name; what is taken was offered', () => {
		const reasons = new Set<string>()
		fc.assert(
			fc.property(wants, fc.constantFrom(...offers), (want, of) => {
				const taken = take(of, want)
				if (!taken.ok) {
					reasons.add(taken.why)
					return
				}
				const { option, places, choice } = taken
				for (const each of [option, ...places.values()]) expect(of.options).toContain(each)
				for (const key of choice.extras) expect(of.extras.map((extra) => extra.key)).toContain(key)
				for (const id of choice.leftOut) expect(of.containers.find((each) => each.id === id)?.mayLeaveOut).toBe(true)
				expect(taken.quote).toEqual(quote(pricesOf(taken), choice))
			}),
			{ numRuns: 1000, examples: refusals },
		)
		expect([...reasons].toSorted()).toEqual([
			'nothing would be left',
			'that container may not be left out',
			'that extra belongs where everything is left out',
			'that extra is not offered',
			'that palette belongs where everything is left out',
			'that palette is not offered',
			'that place is not in the design',
		])
	})

	test('in whatever order it was ticked', () => {
		fc.assert(
			fc.property(wants, (want) => {
				const places = Object.fromEntries(Object.entries(want.places).toReversed())
				const turned = { ...want, places, extras: want.extras.toReversed(), leftOut: want.leftOut.toReversed() }
				const [a, b] = [take(offer, want), take(offer, turned)]
				expect(a.ok).toBe(b.ok)
				if (a.ok && b.ok) expect(a.quote).toEqual(b.quote)
			}),
		)
	})

	test('written down in its one way: taken again it is the same', () => {
		fc.assert(
			fc.property(wants, fc.constantFrom(...offers), (want, of) => {
				const taken = take(of, want)
				if (!taken.ok) return
				const { option, choice } = taken
				const again = take(of, { ...choice, option: option.key, places: keysOf(taken) })
				expect(again).toEqual(taken)
				for (const id of standing(of, choice.leftOut))
					expect(paletteAt(taken, id).key).toBe(want.places[id] ?? want.option)
				expect([...taken.places.values()]).not.toContain(option)
			}),
			{ numRuns: 500 },
		)
	})

	test('no price comes from outside: an altered total changes nothing', () => {
		const cheap = { ...wanted(), totalCents: 1, prices: [] }
		expect(take(offer, cheap)).toEqual(take(offer, wanted()))
		expect(first(offer.options).prices.parts.length).toBeGreaterThan(3)
	})
})
