import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { MoneyFormat } from '@/lib/format/money'
import type { CostedPart } from '@/lib/pricing/cost-book'
import type { PartOf } from '@/lib/pricing/price-list'
import { everything } from '@/lib/pricing/quote/choice'
import type { Costing } from '@/lib/pricing/quote/costing'
import { quote } from '@/lib/pricing/quote/quote'
import { deskExtra, deskOption } from '@/lib/proposal/desk/desk-view'
import { makeOffer } from '@/lib/proposal/make'
import { priceView } from '@/lib/proposal/offer/price-view'
import { costingOf } from '@/lib/season/standing'
import { cents, zero } from '@/lib/units/cents'
import { knownDrafts } from '../known'
import { containerId, facts, first, money, offerOf, placeId, today } from '../sample'

const offer = offerOf()
const option = first(offer.options)
const asked = quote(option.prices, everything)

type Figures = Partial<Omit<CostedPart, 'is' | 'name' | 'place'>>
const part = (of: PartOf, name: string, more: Figures = {}): CostedPart => ({
	...of,
	name,
	place: placeId(1),
	lines: [],
	work: [],
	minutes: 0,
	labourPriceCents: zero,
	labourCostCents: zero,
	otherCostCents: zero,
	costCents: zero,
	grossCents: zero,
	discountCents: zero,
	roundingCents: zero,
	...more,
})
const line = (name: string, price: string, cost: string | null, priceCents: number, costCents: number) => ({
	name,
	price,
	cost,
	priceCents: cents(priceCents),
	costCents: cents(costCents),
})

const birch = line('birch', '12 stems × 1.10 × $18.41 ÷ 10 × 2.2', null, 5346, 2430)
const globes = line('globes', '3 pieces × $54.17 ÷ 6 × 2', 'nobody else uses it: 1 × $54.17', 5687, 5417)
const urn = part({ is: 'container', container: containerId(1) }, 'Left urn', {
	lines: [birch, globes],
	work: [
		{ what: 'base', minutes: 8, how: '8 min' },
		{ what: 'birch', minutes: 6, how: '12 × 0.5 min' },
	],
	minutes: 14.358,
	labourPriceCents: cents(1400),
	labourCostCents: cents(925),
	costCents: cents(8772),
	grossCents: cents(12_433),
	discountCents: cents(622),
	roundingCents: cents(189),
})
const plain: Costing = {
	is: 'costing',
	parts: [urn],
	minutes: 215.5,
	materialCents: cents(7847),
	labourCents: cents(925),
	costCents: cents(8772),
	netCents: cents(12_000),
	marginPercent: 26.9,
	shortfallCents: cents(3950),
}
const desk = (more: Partial<Costing> = {}) =>
	deskOption(
		{ key: 'a', quote: asked, costing: { ...plain, ...more } },
		offer,
		{ marginFloorPercent: 45, presentationStepCents: 500 },
		money,
	)

describe('a palette on the desk', () => {
	test('has the client’s own price beside its cost, margin and hours', () => {
		const { rows, taxes, total, due } = priceView(offer, asked, money)
		const of = desk()
		expect(of.quote).toEqual({ rows: [...rows, ...taxes], total, due })
		expect(of).toMatchObject({ key: 'a', cost: '$87.72', margin: '26.9 %', hours: '3.6 h' })
	})

	test.each([
		{ marginPercent: null, margin: 'none' },
		{ marginPercent: -12.5, margin: '−12.5 %' },
		{ marginPercent: 0, margin: '0 %' },
	])('a margin of $marginPercent is told as $margin', ({ marginPercent, margin }) => {
		expect(desk({ marginPercent }).margin).toBe(margin)
	})

	test('has each part with its lines, its labour, its discount and its rounding', () => {
		expect(first(desk().parts)).toEqual({
			name: 'Left urn',
			price: '$120.00',
			cost: '$87.72',
			lines: [
				{ what: 'birch', how: '12 stems × 1.10 × $18.41 ÷ 10 × 2.2', price: '$53.46', cost: '$24.30' },
				{
					what: 'globes',
					how: '3 pieces × $54.17 ÷ 6 × 2; nobody else uses it: 1 × $54.17',
					price: '$56.87',
					cost: '$54.17',
				},
				{ what: '14 person-minutes', how: 'base 8 min, birch 12 × 0.5 min', price: '$14.00', cost: '$9.25' },
				{ what: 'discount of the agreement', how: '', price: '−$6.22', cost: '' },
				{ what: 'rounded up to the next $5.00', how: '', price: '$1.89', cost: '' },
			],
		})
	})

	test('has what is bought or paid beside lines and labour', () => {
		const dump = part({ is: 'disposal', container: containerId(1) }, 'Left urn', {
			otherCostCents: cents(250),
			costCents: cents(250),
			grossCents: cents(600),
		})
		expect(first(desk({ parts: [dump] }).parts)).toEqual({
			name: 'The dump, Left urn',
			price: '$6.00',
			cost: '$2.50',
			lines: [{ what: 'bought or paid', how: '', price: '', cost: '$2.50' }],
		})
	})

	test.each<{ of: PartOf; name: string; says: string }>([
		{ of: { is: 'extra', extra: 'wreath' }, name: 'Wreath', says: 'Extra: Wreath' },
		{ of: { is: 'travel' }, name: 'Front door', says: 'Way and set-up, Front door' },
		{ of: { is: 'soil', container: containerId(2) }, name: 'Right urn', says: 'Soil, Right urn' },
		{ of: { is: 'take-down', container: containerId(3) }, name: 'Long box', says: 'Taking down, Long box' },
		{ of: { is: 'design' }, name: 'x', says: 'Design' },
		{ of: { is: 'season' }, name: 'y', says: 'Season' },
		{ of: { is: 'supplement' }, name: 'z', says: 'Supplement' },
	])('calls a part $says', ({ of, name, says }) => {
		expect(first(desk({ parts: [part(of, name)] }).parts).name).toBe(says)
	})

	test('an extra alone, at the price that a client sees', () => {
		const wreath = part({ is: 'extra', extra: 'wreath' }, 'Wreath', {
			grossCents: cents(4550),
			discountCents: cents(228),
			costCents: cents(1907),
		})
		expect(deskExtra(wreath, money)).toEqual({ name: 'Wreath', price: '$43.22', cost: '$19.07' })
	})
})

describe('what would mend a margin below the floor', () => {
	test('says why, what more on the price or less cost would do, and what is bought whole for this client alone', () => {
		expect(desk().mend).toEqual([
			'26.9 % is below your floor of 45 %: 11 % of the cost is labour, the dearest line is globes.',
			'$39.50 more on the price would mend it, or $21.73 less cost.',
			'Whole packs are bought for globes alone: use it at another client, or something that others use.',
		])
	})

	test('says nothing of whole packs where others use them', () => {
		const parts = [{ ...urn, lines: [birch] }]
		expect(desk({ parts }).mend).toHaveLength(2)
		expect(desk({ parts }).mend[0]).toContain('the dearest line is birch')
	})

	test('names a material once, though it stands in two containers', () => {
		const twice = [urn, { ...urn, lines: [globes, line('moss', '2 kg', 'nobody else uses it: 1 × $9.91', 40, 991)] }]
		expect(desk({ parts: twice }).mend[2]).toBe(
			'Whole packs are bought for globes and moss alone: use it at another client, or something that others use.',
		)
	})

	test('names no line where all is labour', () => {
		const parts = [{ ...urn, lines: [] }]
		expect(desk({ parts }).mend[0]).toBe('26.9 % is below your floor of 45 %: 11 % of the cost is labour.')
	})

	test.each([
		{ name: 'at the floor', more: { shortfallCents: zero } },
		{ name: 'without a price there is no margin to mend', more: { marginPercent: null } },
	])('is empty $name', ({ more }) => {
		expect(desk(more).mend).toEqual([])
	})

	test('does mend it, either way, and a cent less would not', () => {
		const bare: MoneyFormat = (amount) => String(amount)
		const floors = fc.integer({ min: 1, max: 90_000 }).map((milli) => milli / 1000)
		let seen = 0
		fc.assert(
			fc.property(knownDrafts, floors, (random, marginFloorPercent) => {
				const by = { ...facts, rates: { ...facts.rates, marginFloorPercent } }
				const { offer: of, inputs } = makeOffer(random, by, money, 1, today)
				for (const each of of.options) {
					const costed = costingOf({ option: each, places: new Map() }, inputs, by.rates, { money }, everything)
					const priced = { key: each.key, quote: quote(each.prices, everything), costing: costed }
					const [, mended] = deskOption(priced, of, { marginFloorPercent, presentationStepCents: 500 }, bare).mend
					const [more, less] = (mended?.match(/\d+/g) ?? []).map(Number)
					if (more === undefined || less === undefined) continue
					seen += 1
					const keeps = (net: number, cost: number) =>
						(net - cost) * 100_000 >= Math.round(marginFloorPercent * 1000) * net
					const { netCents, costCents } = costed
					expect(keeps(netCents + more, costCents)).toBe(true)
					expect(keeps(netCents + more - 1, costCents)).toBe(false)
					expect(keeps(netCents, costCents - less)).toBe(true)
				}
			}),
			{ numRuns: 300 },
		)
		expect(seen).toBeGreaterThan(20)
	})
})
