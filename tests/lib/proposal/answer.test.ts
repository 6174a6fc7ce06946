import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { quote } from '@/lib/pricing/quote/quote'
import { take, type Wanted } from '@/lib/proposal/answer'
import type { Draft } from '@/lib/proposal/draft'
import { cents } from '@/lib/units/cents'
import { containerId, draft, first, offerOf } from './sample'

const offer = offerOf()
const wanted = (more: Partial<Wanted> = {}): Wanted => ({ option: 'a', extras: [], leftOut: [], ...more })
const [left, right, box, foreign] = [1, 2, 3, 9].map(containerId)
const allMay: Draft = { ...draft, containers: draft.containers.map((each) => ({ ...each, mayLeaveOut: true })) }
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

describe('what is not offered', () => {
	test.each<{ name: string; more: Partial<Wanted>; why: string }>([
		{ name: 'a palette of another proposal', more: { option: 'c' }, why: 'that palette is not offered' },
		{ name: 'a palette by its name', more: { option: 'Brass and navy' }, why: 'that palette is not offered' },
		{ name: 'no palette', more: { option: '' }, why: 'that palette is not offered' },
		{ name: 'an extra of another proposal', more: { extras: ['garland'] }, why: 'that extra is not offered' },
		{ name: 'one that is, and one that is not', more: { extras: ['wreath', 'x'] }, why: 'that extra is not offered' },
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

describe('laws of taking', () => {
	const some = <T>(of: readonly T[]) => fc.array(fc.constantFrom(...of), { maxLength: 4 })
	const wants = fc.record({
		option: fc.constantFrom('a', 'b', 'c', '__proto__'),
		extras: some(['wreath', 'lights', 'garland', 'toString']),
		leftOut: some(out(left, right, box, foreign)),
	})
	const offers = [offer, offerOf(allMay), offerOf({ ...allMay, agreement: { is: 'discount', percent: 12.5 } })]

	test('it is priced from the frozen lists, or refused by name; what is taken was offered', () => {
		const reasons = new Set<string>()
		fc.assert(
			fc.property(wants, fc.constantFrom(...offers), (want, of) => {
				const taken = take(of, want)
				if (!taken.ok) {
					reasons.add(taken.why)
					return
				}
				const { option, choice } = taken
				expect(of.options).toContain(option)
				for (const key of choice.extras) expect(of.extras.map((extra) => extra.key)).toContain(key)
				for (const id of choice.leftOut) expect(of.containers.find((each) => each.id === id)?.mayLeaveOut).toBe(true)
				expect(taken.quote).toEqual(quote(option.prices, choice))
			}),
			{ numRuns: 1000 },
		)
		expect([...reasons].toSorted()).toEqual([
			'nothing would be left',
			'that container may not be left out',
			'that extra belongs where everything is left out',
			'that extra is not offered',
			'that palette is not offered',
		])
	})

	test('in whatever order it was ticked', () => {
		fc.assert(
			fc.property(wants, (want) => {
				const turned = { ...want, extras: want.extras.toReversed(), leftOut: want.leftOut.toReversed() }
				const [a, b] = [take(offer, want), take(offer, turned)]
				expect(a.ok).toBe(b.ok)
				if (a.ok && b.ok) expect(a.quote).toEqual(b.quote)
			}),
		)
	})

	test('no price comes from outside: an altered total changes nothing', () => {
		const cheap = { ...wanted(), totalCents: 1, prices: [] }
		expect(take(offer, cheap)).toEqual(take(offer, wanted()))
		expect(first(offer.options).prices.parts.length).toBeGreaterThan(3)
	})
})
