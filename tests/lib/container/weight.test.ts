import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isRound, limits, type Vessel, walls } from '@/lib/container/card'
import { soilCm3 } from '@/lib/container/soil'
import { mixes, mixKgPerLitre, mixWhere, wallCm3, wallKgPerLitre, weigh } from '@/lib/container/weight'
import { problemOf } from './problem-of'
import { vessel, vessels } from './sample'

const { PI } = Math

describe('walls', () => {
	test.each<{ name: string; of: Vessel; cm3: number }>([
		{
			name: 'a straight pot: what is outside without what is inside',
			of: vessel({ wallCm: 2 }),
			cm3: PI * (20 ** 2 * 50 - 18 ** 2 * 48),
		},
		{
			name: 'a box of boards',
			of: vessel({
				shape: 'trough',
				topCm: 100,
				topDepthCm: 40,
				bottomCm: 100,
				bottomDepthCm: 40,
				heightCm: 35,
				wallCm: 3,
			}),
			cm3: 100 * 40 * 35 - 94 * 34 * 32,
		},
		{
			name: 'half a sphere in another',
			of: vessel({ shape: 'bowl', topCm: 50, bottomCm: 18, heightCm: 25, wallCm: 4 }),
			cm3: (2 * PI * (25 ** 3 - 21 ** 3)) / 3,
		},
		{ name: 'none', of: vessel({ wallCm: 0 }), cm3: 0 },
	])('$name', ({ of, cm3 }) => {
		expect(wallCm3(of)).toBeCloseTo(cm3, 4)
	})

	test('an urn has its foot beside its bowl, hollow where its wall is thinner than the foot', () => {
		const urn = vessel({ shape: 'urn', topCm: 50, bottomCm: 30, heightCm: 50, wallCm: 1 })
		const frustum = (h: number, a: number, b: number) => (PI * h * (a * a + a * b + b * b)) / 3
		const bowl = frustum(30, 25, 15) - frustum(29, 24, 14)
		const foot = wallCm3(urn) - bowl
		// 20 cm of foot between 6.75 and 15 cm of radius, 1 cm thick
		expect(foot).toBeGreaterThan(20 * PI * (6.75 ** 2 - 5.75 ** 2))
		expect(foot).toBeLessThan(20 * PI * (15 ** 2 - 14 ** 2))
	})
})

describe('weight', () => {
	const pot = vessel({ topCm: 46, bottomCm: 34, heightCm: 41, wallCm: 1, headspaceCm: 5 })
	const litres = soilCm3(pot) / 1000

	// Common practice, no published source; drained mix holds 60 to 65 % of its volume in water.
	test('mix dry and wet', () => {
		expect(mixKgPerLitre).toEqual({
			fresh: { dry: 0.15, wet: 0.75 },
			aged: { dry: 0.4, wet: 1 },
			heaviest: { dry: 0.65, wet: 1.3 },
		})
		expect(limits.map(mixWhere)).toEqual(['aged', ...Array.from({ length: 5 }, () => 'heaviest')])
	})

	test('a vessel that was weighed, its mix and what is in it', () => {
		expect(weigh(pot, { wall: 'resin', vesselKg: 4.2, mix: 'fresh' }, 3.5)).toEqual({
			vesselKg: 4.2,
			isEstimated: false,
			dryKg: 4.2 + litres * 0.15 + 3.5,
			wetKg: 4.2 + litres * 0.75 + 3.5,
		})
	})

	test('a vessel that nobody has weighed is estimated by its walls, and says so', () => {
		const found = weigh(pot, { wall: 'terracotta', vesselKg: null, mix: 'aged' }, 0)
		expect(found.isEstimated).toBe(true)
		expect(found.vesselKg).toBeCloseTo((wallCm3(pot) * wallKgPerLitre.terracotta) / 1000, 9)
	})

	test('wet weighs more than dry, a heavier mix more than a lighter, thicker walls more than thinner', () => {
		const sound = vessels.filter((of) => of.wallCm > 0 && problemOf(of).length === 0)
		fc.assert(
			fc.property(sound, fc.constantFrom(...walls), fc.double({ min: 0, max: 50, noNaN: true }), (of, wall, kg) => {
				const [fresh, aged, heaviest] = mixes.map((mix) => weigh(of, { wall, vesselKg: null, mix }, kg))
				for (const each of [fresh, aged, heaviest]) expect(each?.wetKg).toBeGreaterThan(each?.dryKg ?? 0)
				expect(aged?.wetKg).toBeGreaterThan(fresh?.wetKg ?? 0)
				expect(heaviest?.wetKg).toBeGreaterThan(aged?.wetKg ?? 0)
				const thinner = { ...of, wallCm: of.wallCm / 2 }
				expect(wallCm3(of)).toBeGreaterThan(wallCm3(thinner))
				expect(wallCm3(of)).toBeGreaterThan(0)
			}),
			{ numRuns: 300 },
		)
	})

	test('walls and hollow are the outside of it', () => {
		fc.assert(
			fc.property(
				vessels.filter((of) => of.shape !== 'urn' && problemOf(of).length === 0),
				(of) => {
					const hollow = { ...of, headspaceCm: 0, soilDepthCm: null }
					const solid = { ...hollow, wallCm: 0 }
					expect(wallCm3(of) + soilCm3(hollow)).toBeCloseTo(soilCm3(solid), 3)
					expect(isRound(of.shape) ? of.topDepthCm : null).toBeNull()
				},
			),
			{ numRuns: 300 },
		)
	})
})
