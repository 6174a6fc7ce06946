import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { price } from '@/lib/pricing/price'
import { type Choice, everything } from '@/lib/pricing/quote/choice'
import { costing, marginPercent } from '@/lib/pricing/quote/costing'
import { defaultRates } from '@/lib/pricing/rates'
import { cents } from '@/lib/units/cents'
import { chosenJobs, runs } from '../arbitrary'
import { bare, containerId, extra, job, line, placeId, visit, words } from '../sample'

const lines = [
	line('birch', 'fresh', 'branch', 14, 1840, 10, { onlyHere: true }),
	line('globes', 'ornament', 'cluster kept', 3, 5400, 6, { holding: 'lent', usesBefore: 3 }),
	line('bow', 'faux', 'accent', 2, 1590, 1, { holding: 'own' }),
]
const two = job({
	visits: [visit(1), visit(2)],
	containers: [bare(1, { lines }), bare(2, { place: placeId(2), isNew: true, soilL: 20 })],
	extras: [extra('wreath', { minutes: 18 })],
})
const of = (choice = everything, rates = defaultRates) => {
	const { list, costs } = price({ ...two, rates }, words, choice.leftOut)
	return costing(list, costs, choice)
}

describe('a costing', () => {
	test('is materials, soil, the dump, and labour at its loaded cost', () => {
		const [first] = of().parts
		// two bunches; the written-off globes and the client's own bow cost nothing; 31 + 7 + 5.25 + 1.5 minutes
		expect(first).toMatchObject({
			minutes: 44.75,
			labourPriceCents: 4475,
			labourCostCents: 2958,
			costCents: 3680 + 2958,
		})
		expect(first?.lines.map(({ costCents, priceCents }) => [costCents, priceCents])).toEqual([
			[3680, 6235],
			[0, 1890],
			[0, 0],
		])
		// crew: 44.75, 23, 55 and 55 minutes; owner: 30; 20 litres of soil at 0.25 and one trip to the dump
		expect(of()).toMatchObject({
			minutes: 207.75,
			labourCents: 2958 + 1520 + 3635 + 3635 + 2343,
			materialCents: 3680 + 500 + 250,
			costCents: 18_521,
		})
	})

	test('follows the choice', () => {
		const less = of({ leftOut: [containerId(2)], extras: [] })
		expect(of().costCents - less.costCents).toBe(1520 + 500 + 3635)
		expect(of({ leftOut: [], extras: ['wreath'] }).labourCents - of().labourCents).toBe(1190)
	})

	test('buys whole packs for what is chosen: with one of two containers left out, not half of what both would need', () => {
		const garland = line('magnolia garland', 'fresh', 'green', 4, 2790, 3, { onlyHere: true })
		const pair = job({ containers: [bare(1, { lines: [garland] }), bare(2, { lines: [{ ...garland, count: 3.9 }] })] })
		const bought = (leftOut: Choice['leftOut']) => {
			const { list, costs } = price(pair, words, leftOut)
			const { parts } = costing(list, costs, { leftOut, extras: [] })
			return parts.flatMap((part) => part.lines.map(({ costCents, cost }) => [costCents, cost]))
		}
		// 4 and 3.9 pieces with 10 % loss are three packs of three; 4 alone are two
		expect(bought([])).toEqual([
			[4238, 'nobody else uses it: its share of 3 × $27.90'],
			[4132, 'nobody else uses it: its share of 3 × $27.90'],
		])
		expect(bought([containerId(2)])).toEqual([[5580, 'nobody else uses it: 2 × $27.90']])
	})

	test('is refused for another choice than the book was made for', () => {
		const { list, costs } = price(two, words)
		expect(() => costing(list, costs, { leftOut: [containerId(2)], extras: [] })).toThrow(
			'costing: the cost book was made for another choice',
		)
	})

	test('the rounding and the discount of a container are figures of their own', () => {
		expect(of().parts[0]).toMatchObject({ grossCents: 12_600, discountCents: 0, roundingCents: 400 })
	})

	test.each([
		{ name: 'above the floor', floor: 45, shortfall: 0 },
		// 185.21 ÷ (1 − 0.60) is 463.025, of which 396.00 is there
		{ name: 'below it: what the price lacks', floor: 60, shortfall: 6703 },
		{ name: 'a floor that no price can reach is not asked for', floor: 100, shortfall: 0 },
	])('the floor, $name', ({ floor, shortfall }) => {
		const { netCents, shortfallCents } = of(everything, { ...defaultRates, marginFloorPercent: floor })
		expect(netCents).toBe(39_600)
		expect(shortfallCents).toBe(shortfall)
	})

	test.each([
		{ name: 'a half', net: 9000, cost: 4500, margin: 50 },
		{ name: 'to one decimal', net: 39_600, cost: 18_521, margin: 53.2 },
		{ name: 'half of a tenth goes up', net: 2000, cost: 977, margin: 51.2 },
		{ name: 'a loss', net: 4000, cost: 5010, margin: -25.3 },
		{ name: 'no cost', net: 310, cost: 0, margin: 100 },
		{ name: 'no price', net: 0, cost: 760, margin: null },
	])('margin: $name', ({ net, cost, margin }) => {
		expect(marginPercent(cents(net), cents(cost))).toBe(margin)
	})
})

test('the price that the shortfall asks for reaches the floor, and one cent less does not', () => {
	fc.assert(
		fc.property(chosenJobs, fc.integer({ min: 0, max: 99_000 }), ({ job: drawn, choice }, milli) => {
			const rates = { ...drawn.rates, marginFloorPercent: milli / 1000 }
			const { list, costs } = price({ ...drawn, rates }, words, choice.leftOut)
			const { netCents, costCents, shortfallCents } = costing(list, costs, choice)
			const reaches = (net: number) => BigInt(net - costCents) * 100_000n >= BigInt(net) * BigInt(milli)
			expect(reaches(netCents + shortfallCents)).toBe(true)
			if (shortfallCents > 0) expect(reaches(netCents + shortfallCents - 1)).toBe(false)
		}),
		runs,
	)
})
