import { describe, expect, test } from 'vitest'
import type { Vessel } from '@/lib/container/card'
import { soilLitres } from '@/lib/container/soil'
import { cmPerInch } from '@/lib/format/length'
import { vessel } from '../lib/container/sample'

// NIST Handbook 44, Appendix C: the inch is 2.54 cm; a cubic inch 16.387064 cm³, a cubic foot 1728 of them
// (28.316846592 L), a dry quart a 32nd of the bushel of 2150.42 cubic inches.
const litresPerCubicInch = 16.387064 / 1000
const cubicInchesPerFoot = 1728
const cubicInchesPerDryQuart = 2150.42 / 32

const inches = (...of: number[]) => of.map((inch) => inch * cmPerInch)

/** Thin walls, filled to the rim: what the published figures speak of. */
function round(across: number, high: number, floor = across): Vessel {
	const [topCm = 0, heightCm = 0, bottomCm = 0] = inches(across, high, floor)
	return vessel({ topCm, bottomCm, heightCm })
}

function box(long: number, deep: number, high: number): Vessel {
	const [topCm = 0, topDepthCm = 0, heightCm = 0] = inches(long, deep, high)
	return vessel({ shape: 'window box', topCm, topDepthCm, bottomCm: topCm, bottomDepthCm: topDepthCm, heightCm })
}

const cubicInches = (of: Vessel) => soilLitres(of) / litresPerCubicInch
/** Litres are told to the tenth: half of that, in cubic inches. */
const half = 0.05 / litresPerCubicInch

describe('the inch', () => {
	test('is 2.54 cm, and its cube and its foot follow', () => {
		expect(cmPerInch).toBe(2.54)
		expect(cmPerInch ** 3 / 1000).toBeCloseTo(litresPerCubicInch, 12)
		expect((12 * cmPerInch) ** 3 / 1000).toBeCloseTo(28.316846592, 9)
	})
})

// Single values from pages for gardeners, none of them a standard: each agrees with geometry.
describe('published figures', () => {
	test.each([
		{ name: 'a cylinder of 10 by 10 inches (biologyinsights.com)', of: round(10, 10), published: 785 },
		{ name: 'a cylinder of radius 6, 11 inches deep (biologyinsights.com)', of: round(12, 11), published: 1244 },
		{ name: 'a box of 24 by 12 by 10 inches (theplantecologist.com)', of: box(24, 12, 10), published: 2880 },
		{ name: 'a box of 5 by 8 by 10 inches (doityourself.com)', of: box(5, 8, 10), published: 400 },
	])('$name holds $published cubic inches', ({ of, published }) => {
		expect(Math.abs(cubicInches(of) - published)).toBeLessThanOrEqual(half + 0.5)
	})

	test.each([
		{
			name: '12 by 12 inches: almost 20 quarts (ehow.co.uk, info 8573025)',
			of: round(12, 12),
			quarts: 20,
			within: 0.25,
		},
		{ name: 'radius 6, 11 inches deep: 18.5 (biologyinsights.com)', of: round(12, 11), quarts: 18.5, within: 0.06 },
	])('a pot of $name, dry', ({ of, quarts, within }) => {
		expect(Math.abs(cubicInches(of) / cubicInchesPerDryQuart - quarts)).toBeLessThanOrEqual(within)
	})

	test('a cylinder of 10 by 10 inches holds 0.45 cubic feet (biologyinsights.com)', () => {
		const within = 0.005 + half / cubicInchesPerFoot
		expect(Math.abs(cubicInches(round(10, 10)) / cubicInchesPerFoot - 0.45)).toBeLessThanOrEqual(within)
	})
})

// Dry quarts by geometry, worked by hand: a cylinder as high as wide, and a pot whose floor is two thirds of its rim.
describe('pots as high as they are wide', () => {
	test.each([
		{ rim: 8, cylinder: 5.98, tapered: 4.21 },
		{ rim: 10, cylinder: 11.69, tapered: 8.22 },
		{ rim: 12, cylinder: 20.2, tapered: 14.21 },
		{ rim: 16, cylinder: 47.87, tapered: 33.69 },
		{ rim: 18, cylinder: 68.16, tapered: 47.96 },
		{ rim: 24, cylinder: 161.57, tapered: 113.69 },
	])('$rim inches: $cylinder and $tapered dry quarts', ({ rim, cylinder, tapered }) => {
		const quarts = (of: Vessel) => cubicInches(of) / cubicInchesPerDryQuart
		const within = half / cubicInchesPerDryQuart + 0.005
		expect(Math.abs(quarts(round(rim, rim)) - cylinder)).toBeLessThanOrEqual(within)
		expect(Math.abs(quarts(round(rim, rim, (rim * 2) / 3)) - tapered)).toBeLessThanOrEqual(within)
	})
})

// A published table that geometry contradicts (Star-Tip 1026, 2006) prints 3, 1½ and 1 cubic feet for these.
describe('a window box of 6 by 6 inches', () => {
	test.each([
		{ feet: 6, cubicFeet: 1.5, printed: 3 },
		{ feet: 4, cubicFeet: 1, printed: 1.5 },
		{ feet: 2, cubicFeet: 0.5, printed: 1 },
	])('$feet feet long holds $cubicFeet cubic feet, and not $printed', ({ feet, cubicFeet, printed }) => {
		const is = cubicInches(box(feet * 12, 6, 6)) / cubicInchesPerFoot
		expect(is).toBeCloseTo(cubicFeet, 2)
		expect(Math.abs(is - printed)).toBeGreaterThan(0.4)
	})
})
