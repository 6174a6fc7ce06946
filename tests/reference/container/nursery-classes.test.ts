import { describe, expect, test } from 'vitest'
import { soilCm3 } from '@/lib/container/soil'
import { cmPerInch } from '@/lib/format/length'
import { vessel } from '../../lib/container/sample'

// American Standard for Nursery Stock, ANSI Z60.1 (2004): cubic inches of the container classes, as ozarksoutdoorsolutions.com,
// "Plant pot sizes", quotes them: a weak source. The larger and the SP classes could not be seen, and are not tested.
const classes = [
	{ name: '#1', low: 152, high: 251, litres: [2.49, 4.11] },
	{ name: '#2', low: 320, high: 474, litres: [5.24, 7.77] },
	{ name: '#5', low: 785, high: 1242, litres: [12.86, 20.35] },
] as const

const cm3PerCubicInch = 16.387064
const classOf = (cubicInches: number) =>
	classes.find(({ low, high }) => cubicInches >= low && cubicInches <= high)?.name

/** A thin straight pot, filled to its rim. */
const pot = (across: number, high: number) =>
	vessel({ topCm: across * cmPerInch, bottomCm: across * cmPerInch, heightCm: high * cmPerInch })
const box = (long: number, deep: number, high: number) =>
	vessel({
		shape: 'rectangular',
		topCm: long * cmPerInch,
		topDepthCm: deep * cmPerInch,
		bottomCm: long * cmPerInch,
		bottomDepthCm: deep * cmPerInch,
		heightCm: high * cmPerInch,
	})

describe('nursery container classes', () => {
	test.each([
		{ name: 'the least #1, as a box of 152 cubic inches', of: box(4, 4, 9.5), is: '#1' },
		{ name: 'a round pot of 6 by 6', of: pot(6, 6), is: '#1' },
		{ name: 'between #1 and #2 lies no class: 7 by 7, 269 cubic inches', of: pot(7, 7), is: undefined },
		{ name: 'a round pot of 8 by 8', of: pot(8, 8), is: '#2' },
		{ name: 'a round pot of 10 by 10, 785.4: just a #5', of: pot(10, 10), is: '#5' },
		{ name: 'the most of a #5, as a box of 1242 cubic inches', of: box(9, 12, 11.5), is: '#5' },
		{ name: 'more than a #5', of: pot(12, 12), is: undefined },
	])('$name', ({ of, is }) => {
		expect(classOf(soilCm3(of) / cm3PerCubicInch)).toBe(is)
	})

	test.each(classes)('$name in litres', ({ low, high, litres }) => {
		const inLitres = [low, high].map((cubicInches) => soilCm3(box(1, 1, cubicInches)) / 1000)
		for (const [n, value] of inLitres.entries()) expect(value).toBeCloseTo(litres[n] ?? 0, 2)
	})

	// HortScience 59(10):1477 takes a #1 pot as 2.8 L, the trade gallon of three liquid quarts (173.25 cubic inches).
	test('a trade gallon is a #1', () => {
		expect(classOf(2800 / cm3PerCubicInch)).toBe('#1')
		expect(classOf(173.25)).toBe('#1')
		expect((173.25 * cm3PerCubicInch) / 1000).toBeCloseTo(2.84, 2)
	})
})
