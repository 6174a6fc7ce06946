import { describe, expect, test } from 'vitest'
import { grossParts } from '@/lib/pricing/gross-parts'
import type { Job } from '@/lib/pricing/job'
import { cents } from '@/lib/units/cents'
import { bare, container, extra, job, line, placeId, visit, words } from './sample'

const one = (of: Job, is: string) => grossParts(of, words, []).filter((part) => part.is === is)

describe('parts before discount and rounding', () => {
	test('a container is its lines and its labour, by class of tax', () => {
		const lines = [
			line('birch', 'fresh', 'branch', 12, 1840, 10),
			line('pansy', 'live', 'plant', 7, 465, 1),
			line('globes', 'ornament', 'accent', 3, 5400, 6, { holding: 'lent' }),
		]
		expect(one(job({ containers: [container(1, { lines })] }), 'container')).toMatchObject([
			{
				// 8 + 12 + 3 + 13.136 + 12 × 0.5 + 7 × 0.75 + 3 × 1.75
				minutes: 52.636,
				split: { plants: 5344 + 6836, goods: 1890, labour: 5264 },
				cents: 19_334,
				// at 26.00 and 18.00 in turn, × 1.3 × 2080 ÷ 1500
				labourCostCents: 3479,
			},
		])
	})

	test.each([
		{ name: 'all of it for a new container', quarter: 'winter', isNew: true, litres: 58, price: 3480, cost: 1450 },
		{ name: 'all of it in spring too', quarter: 'spring', isNew: true, litres: 41.5, price: 2490, cost: 1038 },
		{ name: 'a tenth on top in spring', quarter: 'spring', isNew: false, litres: 58, price: 348, cost: 145 },
	] as const)('soil: $name', ({ quarter, isNew, litres, price, cost }) => {
		const of = job({ quarter, containers: [bare(1, { isNew, soilL: litres })] })
		expect(one(of, 'soil')).toMatchObject([
			{ cents: price, otherCostCents: cost, minutes: 0, split: { plants: 0, goods: price, labour: 0 } },
		])
	})

	test.each(['summer', 'autumn', 'winter'] as const)('no soil for an old container in %s', (quarter) => {
		expect(one(job({ quarter }), 'soil')).toEqual([])
	})

	test('disposal has a price of its own and no minutes; a new container has nothing to throw away', () => {
		const of = job({ containers: [bare(1), bare(2, { isNew: true })] })
		expect(one(of, 'disposal')).toMatchObject([{ name: 'pot 1', cents: 600, otherCostCents: 250, minutes: 0 }])
	})

	test('taken down at the doors where no next season is sold', () => {
		const of = job({
			visits: [visit(1), visit(2, { takeDown: true })],
			containers: [bare(1), bare(2, { place: placeId(2) }), bare(3, { place: placeId(2), isNew: true })],
		})
		expect(one(of, 'take-down')).toMatchObject([
			{ name: 'pot 2', cents: 1000, minutes: 10 },
			{ name: 'pot 3', cents: 1000, minutes: 10 },
		])
	})

	test('the way there by its minutes', () => {
		expect(one(job({ visits: [visit(1, { driveMinutes: 14 })] }), 'travel')).toMatchObject([
			{ minutes: 53.667, cents: 5367, labourCostCents: 3547 },
		])
	})

	test('a zone price instead of the drive: the minutes still cost', () => {
		expect(one(job({ visits: [visit(1, { driveMinutes: 14, zoneCents: cents(2750) })] }), 'travel')).toMatchObject([
			{ minutes: 53.667, cents: 6250, split: { labour: 6250 }, labourPriceCents: 6250, labourCostCents: 3547 },
		])
	})

	test.each([
		{ design: 'new', minutes: 30, price: 3000, cost: 2343 },
		{ design: 'repeat', minutes: 15, price: 1500, cost: 1172 },
	] as const)('a $design design, once, by the owner', ({ design, minutes, price, cost }) => {
		const of = job({ design, containers: [bare(1), bare(2)] })
		expect(one(of, 'design')).toMatchObject([{ minutes, cents: price, labourCostCents: cost }])
	})

	test('an extra is its own minutes, those of its pieces, and its lines', () => {
		const bow = line('bow', 'faux', 'accent', 2, 1590, 1)
		expect(one(job({ extras: [extra('wreath', { minutes: 9, lines: [bow] })] }), 'extra')).toMatchObject([
			{ minutes: 10.5, cents: 6678 + 1050, split: { plants: 0, goods: 6678, labour: 1050 } },
		])
	})
})

describe('a job that is not well-formed', () => {
	test.each([
		{ name: 'no visit', of: job({ visits: [] }), says: 'price: a job needs a visit' },
		{
			name: 'a container without a visit',
			of: job({ containers: [bare(4, { place: placeId(2) })] }),
			says: 'price: pot 4 stands at a place without a visit',
		},
		{
			name: 'an extra without a visit',
			of: job({ extras: [extra('wreath', { place: placeId(3) })] }),
			says: 'price: extra wreath stands at a place without a visit',
		},
		{
			name: 'a negative count',
			of: job({ containers: [bare(1, { lines: [line('fir', 'fresh', 'green', -3, 900, 20)] })] }),
			says: 'priceLine: fir: -3',
		},
	])('$name', ({ of, says }) => {
		expect(() => grossParts(of, words, [])).toThrow(says)
	})
})
