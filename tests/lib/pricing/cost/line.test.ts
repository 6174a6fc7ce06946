import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { priceLine } from '@/lib/pricing/cost/line'
import { defaultRates } from '@/lib/pricing/rates'
import { cents } from '@/lib/units/cents'
import { lines, rates, runs } from '../arbitrary'
import { line, words } from '../sample'

const freight = (size: number, packCents: number, freightPercent: number) => ({
	pack: { size, cents: cents(packCents), freightPercent },
})
const birch = line('birch', 'fresh', 'branch', 14, 1840, 10)
const globes = line('globes', 'ornament', 'accent', 3, 5400, 6, { holding: 'lent' })
const dogwood = line('dogwood', 'fresh', 'branch', 9, 1230, 8, freight(8, 1230, 12.5))

describe('cost and price of a line', () => {
	test.each([
		{ name: 'stems from a bunch that others use', of: birch, cost: 2834, price: 6235 },
		{ name: 'freight rides on the pack', of: dogwood, cost: 1712, price: 3766 },
		{ name: 'live plants lose less', of: line('pansy', 'live', 'plant', 7, 465, 1), cost: 3418, price: 6836 },
		{ name: 'greens by weight', of: line('noble fir', 'fresh', 'green', 2.4, 6850, 10), cost: 1808, price: 3978 },
		{ name: 'stakes, none lost', of: line('stakes', 'mechanics', 'none', 6, 999, 25), cost: 240, price: 360 },
		{ name: 'half a cent goes up, twice', of: line('tape', 'mechanics', 'none', 1, 5, 2), cost: 3, price: 5 },
		{ name: 'none of it', of: line('moss', 'fresh', 'none', 0, 777, 3), cost: 0, price: 0 },
		{ name: 'lights sold', of: line('lights', 'light', 'string', 2, 2150, 1), cost: 4300, price: 7740 },
		{
			name: 'lights lent, a third a season',
			of: line('lights', 'light', 'string', 2, 2150, 1, { holding: 'lent' }),
			cost: 1433,
			price: 2579,
		},
		{ name: 'ornaments lent, a third a season', of: globes, cost: 945, price: 1890 },
		{
			name: 'faux lent, a quarter a season',
			of: line('faux berries', 'faux', 'accent', 5, 7999, 12, { holding: 'lent' }),
			cost: 875,
			price: 1750,
		},
		{ name: 'lent for its last paid season', of: { ...globes, usesBefore: 2 }, cost: 945, price: 1890 },
		{
			name: 'written off: free to the studio, its price unchanged',
			of: { ...globes, usesBefore: 3 },
			cost: 0,
			price: 1890,
		},
		{ name: 'long written off', of: { ...globes, usesBefore: 9 }, cost: 0, price: 1890 },
		{
			name: 'sold out of storage is no written-off loan',
			of: { ...globes, holding: 'sold', usesBefore: 9 },
			cost: 2835,
			price: 5670,
		},
		{ name: 'the client’s own', of: { ...birch, holding: 'own' }, cost: 0, price: 0 },
		{
			name: 'the client’s own, though nobody else uses it',
			of: { ...birch, holding: 'own', onlyHere: true },
			cost: 0,
			price: 0,
		},
		{
			name: 'nobody else uses it: two bunches, the price of a share',
			of: { ...birch, onlyHere: true },
			cost: 3680,
			price: 6235,
		},
		{ name: 'whole packs carry freight', of: { ...dogwood, onlyHere: true }, cost: 2768, price: 3766 },
		{ name: 'a whole case lent', of: { ...globes, onlyHere: true }, cost: 1800, price: 1890 },
		{ name: 'a whole case written off', of: { ...globes, onlyHere: true, usesBefore: 4 }, cost: 0, price: 1890 },
		{
			name: 'whole packs that come out even',
			of: line('picks', 'mechanics', 'none', 20, 430, 5, { onlyHere: true }),
			cost: 1720,
			price: 2580,
		},
	] as const)('$name', ({ of, cost, price }) => {
		expect(priceLine(of, defaultRates, words)).toMatchObject({ name: of.name, costCents: cost, priceCents: price })
	})

	test.each([
		{ name: 'a negative count', of: { ...birch, count: -2 }, says: 'priceLine: birch: -2 from packs of 10 at 1840' },
		{ name: 'an empty pack', of: { ...birch, ...freight(0, 1840, 0) }, says: 'priceLine: birch: 14 from packs of 0' },
		{ name: 'a negative price', of: { ...birch, ...freight(10, -5, 0) }, says: 'birch: 14 from packs of 10 at -5' },
		{ name: 'a fresh stem lent', of: { ...birch, holding: 'lent' }, says: 'birch (fresh) cannot be lent' },
		{
			name: 'a plant lent',
			of: line('ivy', 'live', 'plant', 4, 395, 1, { holding: 'lent' }),
			says: 'ivy (live) cannot be lent',
		},
		{
			name: 'a count finer than a thousandth',
			of: { ...birch, count: 0.00025 },
			says: '0.00025 has more than three decimals',
		},
		{ name: 'no number', of: { ...birch, count: Number.NaN }, says: 'NaN' },
	] as const)('refuses $name', ({ of, says }) => {
		expect(() => priceLine(of, defaultRates, words)).toThrow(says)
	})
})

describe('laws of a line', () => {
	test('a pack k times as large at k times the price changes nothing for a line that others use too', () => {
		const larger = fc.integer({ min: 2, max: 60 })
		fc.assert(
			fc.property(lines, rates, larger, (drawn, by, factor) => {
				const shared = { ...drawn, onlyHere: false }
				const size = Math.round(shared.pack.size * 1000 * factor) / 1000
				const scaled = { ...shared, ...freight(size, shared.pack.cents * factor, shared.pack.freightPercent) }
				const { costCents, priceCents } = priceLine(shared, by, words)
				expect(priceLine(scaled, by, words)).toMatchObject({ costCents, priceCents })
			}),
			runs,
		)
	})

	test('whole packs change the cost, never below the share, and never the price', () => {
		fc.assert(
			fc.property(lines, rates, (drawn, by) => {
				const shared = priceLine({ ...drawn, onlyHere: false }, by, words)
				const alone = priceLine({ ...drawn, onlyHere: true }, by, words)
				expect(alone.priceCents).toBe(shared.priceCents)
				expect(alone.costCents).toBeGreaterThanOrEqual(shared.costCents)
			}),
			runs,
		)
	})

	test('one more never costs less, nor is it priced less', () => {
		fc.assert(
			fc.property(lines, rates, (drawn, by) => {
				const less = { ...drawn, count: Math.floor(drawn.count) }
				const [before, after] = [priceLine(less, by, words), priceLine({ ...less, count: less.count + 1 }, by, words)]
				expect(after.costCents).toBeGreaterThanOrEqual(before.costCents)
				expect(after.priceCents).toBeGreaterThanOrEqual(before.priceCents)
			}),
			runs,
		)
	})

	test('seasons outside change what a loan costs and never what it is sold for', () => {
		fc.assert(
			fc.property(lines, rates, fc.nat(20), (drawn, by, usesBefore) => {
				const [now, then] = [priceLine(drawn, by, words), priceLine({ ...drawn, usesBefore }, by, words)]
				expect(then.priceCents).toBe(now.priceCents)
				if (drawn.holding !== 'lent') expect(then.costCents).toBe(now.costCents)
			}),
			runs,
		)
	})
})
