import { describe, expect, test } from 'vitest'
import { grow } from '@/lib/recipe/grow/grow'
import type { Pot } from '@/lib/recipe/grow/reference'
import { openingRatio, reference, rimRatio } from '@/lib/recipe/grow/reference'
import type { Grows } from '@/lib/recipe/recipe'
import type { DesignMaterial } from '@/lib/recipe/traits'
import { accent, branch, by, cluster, green, line, plant, trailing } from '../sample'
import { pot } from './pots'

const one = (material: DesignMaterial, grows: Grows, at: Pot): number | undefined =>
	grow([line(material, grows)], at, by([material]))[0]?.count

// Every pot is resin of 1 cm, so 2 cm narrower inside than told.
const wide = pot([24, 24, 24])
const box = pot([36, 8, 8], { shape: 'window box', wallCm: 2, stands: 'against a wall' })
const trough = pot([48, 14, 18], { shape: 'trough' })
const corner = pot([18, null, 18], { stands: 'in a corner' })

describe('the reference', () => {
	test('is 18 inches of resin, seen all round', () => {
		expect([openingRatio(reference), rimRatio(Math.PI * 43.72)]).toEqual([1, 1])
		expect(openingRatio(pot([36.787401574803148, null, 36]))).toBeCloseTo((91.44 / 43.72) ** 2, 6)
	})
})

// The ways of growing are common practice, no published source; the figures are worked by hand.
describe('fixed', () => {
	const top = branch(1, 'spruce top')
	test.each([
		{ name: 'as it is written, however wide the pot', at: wide, count: 1, is: 1 },
		{ name: 'along a box: 87.4 cm ÷ 35 is 2.5, so 3', at: box, count: 1, is: 3 },
		{ name: 'along a trough: 119.9 cm ÷ 35 is 3.4, so 3', at: trough, count: 1, is: 3 },
		{ name: 'a planter that is not long', at: pot([30, 18, 20]), count: 2, is: 2 },
		{ name: 'what was written as nothing', at: box, count: 0, is: 0 },
		{ name: 'half a log is one', at: wide, count: 0.4, is: 1 },
	])('$name', ({ at, count, is }) => {
		expect(one(top, { way: 'fixed', count }, at)).toBe(is)
	})
})

describe('stems', () => {
	const dogwood = branch(2, 'red dogwood')
	test.each([
		{ name: '58.96² ÷ 1501.2 is 2.316; to the power of ¾ 1.877', at: wide, count: 12, is: 23 },
		{ name: 'a small pot', at: pot([12, null, 12]), count: 12, is: 6 },
		{ name: 'along a box: 87.4 cm ÷ 40', at: box, count: 7, is: 15 },
		{ name: 'at least one', at: pot([8, null, 8]), count: 1, is: 1 },
	])('$name', ({ at, count, is }) => {
		expect(one(dogwood, { way: 'stems', count }, at)).toBe(is)
	})
})

describe('greens', () => {
	test.each([
		{ name: 'with the opening', at: wide, count: 20, is: 46 },
		{ name: 'less by what a wall hides', at: pot([24, 24, 24], { stands: 'against a wall' }), count: 20, is: 37 },
		{ name: 'less by what a corner hides', at: corner, count: 20, is: 13 },
	])('$name', ({ at, count, is }) => {
		expect(one(green(3, 'noble fir'), { way: 'greens', count }, at)).toBe(is)
	})

	test.each([
		{ name: 'by weight, to a thousandth', unit: 'kg', at: wide, count: 0.5, is: 1.158 },
		{ name: 'by volume', unit: 'litre', at: corner, count: 1.5, is: 0.975 },
		{ name: 'never to nothing', unit: 'kg', at: pot([8, null, 8]), count: 0.001, is: 0.001 },
	] as const)('$name', ({ unit, at, count, is }) => {
		expect(one(green(4, 'white pine', { unit }), { way: 'greens', count }, at)).toBe(is)
	})
})

describe('rim', () => {
	test.each([
		{ name: 'a square: 235.8 cm of rim to 137.4', at: wide, is: 15 },
		{ name: 'a round pot in a corner shows 0.4 of it', at: corner, is: 4 },
		{ name: 'a box by a wall: front and two ends, 120.1 cm', at: box, is: 8 },
	])('$name', ({ at, is }) => {
		expect(one(trailing(5, 'cedar'), { way: 'rim', count: 9 }, at)).toBe(is)
	})
})

describe('faces', () => {
	const bow = accent(6, 'velvet bows')
	test.each([
		{ name: 'round, seen all round', at: reference, count: 1, is: 3 },
		{ name: 'one face by a wall', at: pot([18, null, 18], { stands: 'against a wall' }), count: 3, is: 3 },
		{ name: 'groups of 3 × √2.316 are 4.6, so 5, on four faces', at: wide, count: 3, is: 20 },
		{ name: 'groups above seven need not be odd: 5 × √2.316 is 7.6', at: wide, count: 5, is: 32 },
		{ name: 'a box by its front, three groups', at: box, count: 1, is: 3 },
		{ name: 'a group of two stays at the reference', at: reference, count: 2, is: 6 },
		{ name: 'a group of two turns odd beyond it', at: wide, count: 2, is: 12 },
	])('$name', ({ at, count, is }) => {
		expect(one(bow, { way: 'faces', count }, at)).toBe(is)
	})

	test.each([
		{ name: 'a focal cluster is one a face', at: pot([40, 40, 36]), count: 1, is: 4 },
		{ name: 'and its parts are not counted', at: wide, count: 1, is: 4 },
	])('$name', ({ at, count, is }) => {
		expect(one(cluster(7, 'clusters of brass globes'), { way: 'faces', count }, at)).toBe(is)
	})
})

describe('spacing', () => {
	// 1.25 × share × opening ÷ (s² · sin 60°)
	test.each([
		{ name: 'half of the reference at 20 cm: 2.71', at: reference, share: 0.5, spacingCm: 20, is: 3 },
		{ name: 'a quarter of a square at 15 cm: 5.57', at: wide, share: 0.25, spacingCm: 15, is: 6 },
		{ name: 'at least one', at: reference, share: 0.1, spacingCm: 60, is: 1 },
		{ name: 'no share, no plant', at: wide, share: 0, spacingCm: 15, is: 0 },
	])('$name', ({ at, share, spacingCm, is }) => {
		expect(one(plant(8, 'coral bells', { spacingCm }), { way: 'spacing', share }, at)).toBe(is)
	})

	test('a card without spacing: by its spread, and without that one', () => {
		const grows = { way: 'spacing', share: 0.5 } as const
		expect(one(plant(9, 'sage', { spacingCm: null, acrossCm: 20 }), grows, reference)).toBe(3)
		expect(one(plant(9, 'sage', { spacingCm: null }), grows, wide)).toBe(1)
	})
})
