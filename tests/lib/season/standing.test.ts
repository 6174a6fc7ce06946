import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { price } from '@/lib/pricing/price'
import { everything } from '@/lib/pricing/quote/choice'
import { costing } from '@/lib/pricing/quote/costing'
import { quote } from '@/lib/pricing/quote/quote'
import type { Draft } from '@/lib/proposal/draft'
import { jobOf } from '@/lib/proposal/job-of'
import { makeOffer } from '@/lib/proposal/make'
import { costingOf, hexesOf, leastTotal, standing } from '@/lib/season/standing'
import { hex } from '@/lib/units/hex'
import { knownDrafts } from '../proposal/known'
import { containerId, draft, facts, first, made, money, placeId, today } from '../proposal/sample'

const { offer, inputs } = made()
const words = { money }
const [copper, brass] = offer.options
const stands = (of = { offer, inputs }, chosen?: Parameters<typeof standing>[4]) =>
	standing(of.offer, of.inputs, facts.rates, words, chosen)

describe('how a proposal shows in the ledger', () => {
	test('of several palettes the one of least price stands for all, unnamed', () => {
		const totals = offer.options.map(({ prices }) => quote(prices, everything).totalCents)
		const least = totals[0] !== undefined && totals[1] !== undefined && totals[0] < totals[1] ? copper : brass
		expect(stands()).toMatchObject({
			palette: '',
			paletteCount: 2,
			paletteHexes: least && hexesOf(least),
			valueCents: least && quote(least.prices, everything).netCents,
		})
	})

	test('whichever of them comes first', () => {
		const turned: Draft = { ...draft, options: draft.options.toReversed() }
		expect(stands(made(turned))).toEqual(stands())
	})

	test('one palette is named', () => {
		expect(stands(made({ ...draft, options: [first(draft.options)] }))).toMatchObject({
			palette: 'Copper and plum',
			paletteCount: 1,
			paletteHexes: '#b4643a',
		})
	})

	test('the chosen one stands for itself, at what was taken', () => {
		const choice = { extras: ['wreath'], leftOut: [containerId(3)] }
		const option = copper ?? expect.fail('there are two')
		const of = stands(undefined, { option, places: new Map(), choice })
		expect(of).toMatchObject({ palette: 'Copper and plum', paletteCount: 1 })
		expect(of.valueCents).toBe(quote(option.prices, choice).netCents)
		expect(of.valueCents).not.toBe(quote(option.prices, everything).netCents)
	})

	test('before tax, which is not the studio’s, while the client’s own page has the total', () => {
		const option = copper ?? expect.fail('there are two')
		const { netCents, totalCents } = quote(option.prices, everything)
		expect(netCents).toBeLessThan(totalCents)
		expect(stands(undefined, { option, places: new Map(), choice: everything }).valueCents).toBe(netCents)
		expect(leastTotal(offer)).toBe(Math.min(...offer.options.map(({ prices }) => quote(prices, everything).totalCents)))
	})

	test('with its margin in tenths of a per cent, from what was frozen', () => {
		const option = copper ?? expect.fail('there are two')
		const job = jobOf(draft, first(draft.options), facts) ?? expect.fail('there is a container')
		const { costs } = price(job, words)
		const { marginPercent } = costing(option.prices, costs, everything)
		expect(stands(undefined, { option, places: new Map(), choice: everything }).marginTenths).toBe(
			Math.round((marginPercent ?? 0) * 10),
		)
	})

	test('a place with another palette is named with it, and value and margin are those of both', () => {
		const [option, other] = [copper ?? expect.fail('there are two'), brass ?? expect.fail('there are two')]
		const taken = { option, places: new Map([[placeId(2), other]]) }
		const of = stands(undefined, { ...taken, choice: everything })
		expect(of).toMatchObject({ palette: 'Copper and plum; Brass and navy at Side door', paletteCount: 1 })
		expect(of.paletteHexes).toBe(`${hexesOf(option)} ${hexesOf(other)}`)
		const whole = stands(undefined, { option, places: new Map(), choice: everything })
		expect([of.valueCents, of.marginTenths]).not.toEqual([whole.valueCents, whole.marginTenths])
		// The same containers, drafted as one palette.
		const [a, b] = draft.options
		const pots = [...(a?.pots.slice(0, 2) ?? []), ...(b?.pots.slice(2) ?? [])]
		const drafted = { ...draft, options: [{ ...first(draft.options), pots }] }
		const asOne = stands(made(drafted))
		expect([of.valueCents, of.marginTenths]).toEqual([asOne.valueCents, asOne.marginTenths])
	})

	test('an offer without a palette stands for nothing, and inputs that lack one cost nothing', () => {
		expect(() => stands(made({ ...draft, options: [] }))).toThrow('standing: the offer has no option')
		const option = copper ?? expect.fail('there are two')
		expect(() => costingOf({ option, places: new Map() }, inputs.slice(1), facts.rates, words, everything)).toThrow(
			'costingOf: there are no inputs for the option a',
		)
	})

	test('colours side by side', () => {
		const chip = (colour: string) => ({ name: 'x', hex: hex(colour), echoes: '' })
		expect(hexesOf({ palette: [chip('#24365a'), chip('#bb9346')] })).toBe('#24365a #bb9346')
		expect(hexesOf({ palette: [] })).toBe('')
	})

	test('at the palette that a client would pay least for', () => {
		fc.assert(
			fc.property(knownDrafts, (random) => {
				const of = makeOffer(random, facts, money, 1, today)
				fc.pre(of.offer.options.length > 0)
				const quotes = of.offer.options.map(({ prices }) => quote(prices, everything))
				const least = Math.min(...quotes.map(({ totalCents }) => totalCents))
				expect(leastTotal(of.offer)).toBe(least)
				const nets = quotes.filter(({ totalCents }) => totalCents === least).map(({ netCents }) => netCents)
				expect(nets).toContain(stands(of).valueCents)
			}),
			{ numRuns: 150 },
		)
	})
})
