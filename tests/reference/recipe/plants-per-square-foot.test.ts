import { describe, expect, test } from 'vitest'
import { cmPerInch } from '@/lib/format/length'
import { grow } from '@/lib/recipe/grow/grow'
import { plantsFor } from '@/lib/recipe/grow/spacing'
import { pot } from '../../lib/recipe/grow/pots'
import { by, line, plant } from '../../lib/recipe/sample'

const squareFootCm2 = (12 * cmPerInch) ** 2
/** Pots are planted 1.25 times as close as beds: taken out again, to compare with tables for beds. */
const bed = 1 / 1.25
const perSquareFoot = (inches: number) => plantsFor(squareFootCm2, bed, inches * cmPerInch)

// Plants per square foot in a square grid: spacing charts of Glover Perennials, Hanover Farms, Wenke and bloomindesigns.com.
// Staggered rows take 2 / √3 = 1.1547 times as many (bloomindesigns.com: 100 and 115 plants on 100 square feet at 12 in).
const staggered = 1.154700538
const square = [
	{ inches: 4, published: 9 },
	{ inches: 6, published: 4 },
	{ inches: 8, published: 2.25 },
	{ inches: 12, published: 1 },
	{ inches: 15, published: 0.64 },
	{ inches: 20, published: 0.36 },
	{ inches: 24, published: 0.25 },
] as const

describe('plants per square foot', () => {
	test.each(square)(
		'$inches inches: $published in a square grid, 1.1547 times that staggered',
		({ inches, published }) => {
			expect(perSquareFoot(inches)).toBeCloseTo(published * staggered, 6)
		},
	)

	test('115 plants on 100 square feet at 12 inches', () => {
		expect(Math.round(100 * perSquareFoot(12))).toBe(115)
	})

	// Glover Perennials: plants for 1,000 square feet in a square grid; it rounds to tens.
	test.each([
		{ inches: 4, published: 9000 },
		{ inches: 6, published: 4000 },
		{ inches: 8, published: 2250 },
		{ inches: 10, published: 1440 },
		{ inches: 12, published: 1000 },
		{ inches: 15, published: 640 },
		{ inches: 18, published: 440 },
		{ inches: 24, published: 250 },
		{ inches: 36, published: 111 },
	])('$inches inches: $published on 1,000 square feet', ({ inches, published }) => {
		expect(Math.abs((1000 * perSquareFoot(inches)) / staggered - published)).toBeLessThanOrEqual(5)
	})
})

// Sunset's chart of bedding plants in staggered rows: square feet that 48 and 64 plants cover; it rounds down to halves.
describe('square feet that plants cover', () => {
	test.each([
		{ inches: 4, plants: 48, published: 4.5 },
		{ inches: 4, plants: 64, published: 6 },
		{ inches: 6, plants: 48, published: 10 },
		{ inches: 6, plants: 64, published: 13.5 },
		{ inches: 10, plants: 48, published: 28.5 },
		{ inches: 10, plants: 64, published: 38.5 },
		{ inches: 15, plants: 48, published: 64.5 },
	])('$plants at $inches inches: $published', ({ inches, plants, published }) => {
		const covers = plants / perSquareFoot(inches)
		expect(covers - published).toBeGreaterThanOrEqual(-0.02)
		expect(covers - published).toBeLessThan(0.5)
	})

	// At 18 inches the chart says 92 where geometry gives 93.53; McShane's flyer, for 36 plants at 8 inches, says 10.5 for 13.86.
	test.each([
		{ inches: 18, plants: 48, published: 92, off: 0.02 },
		{ inches: 8, plants: 36, published: 10.5, off: 0.25 },
	])('a row that geometry contradicts: $plants at $inches inches', ({ inches, plants, published, off }) => {
		const covers = plants / perSquareFoot(inches)
		expect((covers - published) / covers).toBeGreaterThan(off - 0.01)
	})
})

// Plants per pot by its width: northeastohiothrive.com (10 to 12 in: 3 to 4; 14 to 16: 4 to 6; 16 to 20: 6 to 8) and
// wcfcourier.com (16 to 20: 5 to 8), both press; for plants in the usual small pots, here 18 cm apart.
describe('plants for a whole pot', () => {
	test.each([
		{ inches: 12, low: 3, high: 4 },
		{ inches: 15, low: 4, high: 6 },
		{ inches: 18, low: 6, high: 8 },
		{ inches: 20, low: 5, high: 8 },
	])('$inches inches across: $low to $high', ({ inches, low, high }) => {
		const sage = plant(1, 'sage', { spacingCm: 18 })
		const [grown] = grow([line(sage, { way: 'spacing', share: 1 })], pot([inches, null, inches]), by([sage]))
		expect(grown?.count).toBeGreaterThanOrEqual(low)
		expect(grown?.count).toBeLessThanOrEqual(high)
	})
})
