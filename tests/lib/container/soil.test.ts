import { describe, expect, test } from 'vitest'
import type { Vessel } from '@/lib/container/card'
import { innerOpeningCm2, openingCm2, soilCm3, soilDepthCm, soilLitres } from '@/lib/container/soil'
import { vessel } from './sample'

const { PI } = Math
const toLitres = (cm3: number) => Math.round(cm3 / 100) / 10

const frustum = (h: number, a: number, b: number) => (PI * h * (a * a + a * b + b * b)) / 3
const cap = (h: number, radius: number) => (PI * h * h * (3 * radius - h)) / 3

// Closed forms of geometry, worked from inner measures.
describe('soil of a round vessel', () => {
	test.each<{ name: string; of: Vessel; cm3: number }>([
		{ name: 'a cylinder, π r² h', of: vessel(), cm3: PI * 20 ** 2 * 50 },
		{
			name: 'a tapered pot, a frustum',
			of: vessel({ topCm: 46, bottomCm: 30, heightCm: 41 }),
			cm3: frustum(41, 23, 15),
		},
		{
			name: 'a pot that widens downwards',
			of: vessel({ topCm: 35, bottomCm: 44, heightCm: 33 }),
			cm3: frustum(33, 17.5, 22),
		},
		{
			name: 'an urn of 55, whose bowl is the upper 33',
			of: vessel({ shape: 'urn', topCm: 48, bottomCm: 26, heightCm: 55 }),
			cm3: frustum(33, 24, 13),
		},
		{
			name: 'an urn in its walls, short of its rim: 30 of bowl, 28 inside, 21 of soil',
			of: vessel({ shape: 'urn', topCm: 46, bottomCm: 32, heightCm: 50, wallCm: 2, headspaceCm: 7 }),
			cm3: frustum(21, 19.25, 14),
		},
		{
			name: 'an urn of which nothing is left below its headspace',
			of: vessel({ shape: 'urn', topCm: 31, bottomCm: 22, heightCm: 24, wallCm: 3, headspaceCm: 12 }),
			cm3: 0,
		},
		{
			name: 'terracotta, its walls and floor taken off',
			of: vessel({ topCm: 50, bottomCm: 36, heightCm: 42.5, wallCm: 2.5 }),
			cm3: frustum(40, 22.5, 15.5),
		},
		{
			name: 'a cylinder short of its rim',
			of: vessel({ heightCm: 45, headspaceCm: 5 }),
			cm3: PI * 20 ** 2 * 40,
		},
		{
			name: 'a tapered pot short of its rim: 24 of 25 cm across where the soil ends',
			of: vessel({ topCm: 50, bottomCm: 26, heightCm: 24, headspaceCm: 2 }),
			cm3: frustum(22, 24, 13),
		},
		{
			name: 'a cylinder above a false bottom',
			of: vessel({ heightCm: 70, headspaceCm: 4, soilDepthCm: 31 }),
			cm3: PI * 20 ** 2 * 31,
		},
		{
			name: 'a false bottom deeper than the pot is none',
			of: vessel({ heightCm: 28, headspaceCm: 3, soilDepthCm: 60 }),
			cm3: PI * 20 ** 2 * 25,
		},
	])('$name', ({ of, cm3 }) => {
		expect(soilLitres(of)).toBe(toLitres(cm3))
	})
})

describe('soil of a box', () => {
	test.each<{ name: string; of: Vessel; cm3: number }>([
		{
			name: 'straight walls, length × depth × height',
			of: vessel({ shape: 'window box', topCm: 120, topDepthCm: 20, bottomCm: 120, bottomDepthCm: 20, heightCm: 18 }),
			cm3: 120 * 20 * 18,
		},
		{
			name: 'similar sections, h (A₁ + A₂ + √(A₁A₂)) / 3',
			of: vessel({ shape: 'rectangular', topCm: 60, topDepthCm: 40, bottomCm: 45, bottomDepthCm: 30, heightCm: 37 }),
			cm3: (37 * (60 * 40 + 45 * 30 + Math.sqrt(60 * 40 * 45 * 30))) / 3,
		},
		{
			name: 'a square that tapers',
			of: vessel({ shape: 'square', topCm: 61, topDepthCm: 61, bottomCm: 43, bottomDepthCm: 43, heightCm: 58 }),
			cm3: (58 * (61 ** 2 + 43 ** 2 + 61 * 43)) / 3,
		},
		{
			name: 'sections that are not similar, h (2ab + ad + cb + 2cd) / 6',
			of: vessel({ shape: 'trough', topCm: 100, topDepthCm: 34, bottomCm: 90, bottomDepthCm: 16, heightCm: 29 }),
			cm3: (29 * (2 * 100 * 34 + 100 * 16 + 90 * 34 + 2 * 90 * 16)) / 6,
		},
		{
			name: 'a square of which only the front was measured',
			of: vessel({ shape: 'square', topCm: 38, bottomCm: 38, heightCm: 35 }),
			cm3: 38 * 38 * 35,
		},
		{
			name: 'cast stone, four centimetres on every side and below',
			of: vessel({
				shape: 'column',
				topCm: 36,
				topDepthCm: 32,
				bottomCm: 36,
				bottomDepthCm: 32,
				heightCm: 90,
				wallCm: 4,
			}),
			cm3: 28 * 24 * 86,
		},
	])('$name', ({ of, cm3 }) => {
		expect(soilLitres(of)).toBe(toLitres(cm3))
	})
})

describe('soil of a bowl', () => {
	test.each<{ name: string; of: Vessel; cm3: number }>([
		{
			name: 'half a sphere, 2 π r³ / 3',
			of: vessel({ shape: 'bowl', topCm: 54, bottomCm: 20, heightCm: 27 }),
			cm3: (2 * PI * 27 ** 3) / 3,
		},
		{
			name: 'half a sphere inside its wall',
			of: vessel({ shape: 'bowl', topCm: 56, bottomCm: 20, heightCm: 28, wallCm: 3 }),
			cm3: (2 * PI * 25 ** 3) / 3,
		},
		{
			name: 'a cap of a sphere of 25, 40 across and 10 deep',
			of: vessel({ shape: 'bowl', topCm: 40, bottomCm: 15, heightCm: 10 }),
			cm3: cap(10, 25),
		},
		{
			name: 'the same cap short of its rim',
			of: vessel({ shape: 'bowl', topCm: 40, bottomCm: 15, heightCm: 10, headspaceCm: 3 }),
			cm3: cap(7, 25),
		},
		{
			name: 'the same cap above a false bottom',
			of: vessel({ shape: 'bowl', topCm: 40, bottomCm: 15, heightCm: 10, headspaceCm: 1, soilDepthCm: 5 }),
			cm3: cap(9, 25) - cap(4, 25),
		},
	])('$name', ({ of, cm3 }) => {
		expect(soilLitres(of)).toBe(toLitres(cm3))
	})
})

describe('the opening', () => {
	test.each<{ name: string; of: Vessel; cm2: number }>([
		{ name: 'of the reference pot, 18 inches across', of: vessel({ topCm: 45.72, bottomCm: 30 }), cm2: 1642 },
		{ name: 'of a pot in its walls', of: vessel({ topCm: 45, wallCm: 2.5 }), cm2: Math.round(PI * 20 ** 2) },
		{ name: 'of a square of 24 inches', of: vessel({ shape: 'square', topCm: 60.96, topDepthCm: 60.96 }), cm2: 3716 },
		{
			name: 'of a box in its walls',
			of: vessel({ shape: 'window box', topCm: 124, topDepthCm: 24, wallCm: 2 }),
			cm2: 120 * 20,
		},
		{ name: 'of a bowl is a circle too', of: vessel({ shape: 'bowl', topCm: 33 }), cm2: Math.round(PI * 16.5 ** 2) },
		{ name: 'does not ask for the height', of: vessel({ topCm: 29, heightCm: 88 }), cm2: Math.round(PI * 14.5 ** 2) },
	])('$name', ({ of, cm2 }) => {
		expect(openingCm2(of)).toBe(cm2)
	})
})

describe('unrounded', () => {
	const pot = vessel({ topCm: 41, bottomCm: 33, heightCm: 47, wallCm: 1.5, headspaceCm: 6 })
	// inside 38 to 30 cm across over 45.5; the soil 39.5 deep, where it is 30 + 8 × 39.5 ÷ 45.5 across
	const atTop = (30 + (8 * 39.5) / 45.5) / 2

	test('soil in cm³ and the opening in cm²', () => {
		expect(soilCm3(pot)).toBeCloseTo(frustum(39.5, atTop, 15), 6)
		expect(innerOpeningCm2(pot)).toBeCloseTo(PI * 19 ** 2, 9)
		expect(soilLitres(pot)).toBe(Math.round(soilCm3(pot) / 100) / 10)
	})

	test.each<{ name: string; of: Vessel; deep: number }>([
		{ name: 'down to the floor', of: pot, deep: 39.5 },
		{ name: 'down to a false bottom', of: { ...pot, soilDepthCm: 27 }, deep: 27 },
		{ name: 'a false bottom below the floor is none', of: { ...pot, soilDepthCm: 46 }, deep: 39.5 },
		{ name: 'of an urn, its bowl', of: { ...pot, shape: 'urn' }, deep: 47 * 0.6 - 1.5 - 6 },
		{ name: 'none where none fits', of: { ...pot, headspaceCm: 48 }, deep: 0 },
	])('depth of the soil: $name', ({ of, deep }) => {
		expect(soilDepthCm(of)).toBeCloseTo(deep, 9)
	})
})
