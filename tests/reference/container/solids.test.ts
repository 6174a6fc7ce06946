import { describe, expect, test } from 'vitest'
import type { Vessel } from '@/lib/container/card'
import { soilCm3 } from '@/lib/container/soil'
import { vessel } from '../../lib/container/sample'
import { thrown } from './witness'

const { PI } = Math

// Closed forms of solid geometry (Euclid XII; Heron, Metrica II for the frusta; Archimedes, On the Sphere and Cylinder for
// the cap), in inner measures and worked beside the code; and points thrown at random as a second witness.
type Solid = { readonly name: string; readonly of: Vessel; readonly cm3: number }
const solids: readonly Solid[] = [
	{ name: 'cylinder π r² h', of: vessel({ topCm: 42, bottomCm: 42, heightCm: 37 }), cm3: PI * 21 ** 2 * 37 },
	{
		name: 'frustum of a cone π h (R² + R r + r²) / 3',
		of: vessel({ topCm: 46, bottomCm: 33, heightCm: 41, wallCm: 2.5, headspaceCm: 0 }),
		cm3: (PI * 38.5 * (20.5 ** 2 + 20.5 * 14 + 14 ** 2)) / 3,
	},
	{
		name: 'frustum of a pyramid h (A + B + √(A B)) / 3',
		of: vessel({ shape: 'square', topCm: 61, topDepthCm: 61, bottomCm: 48, bottomDepthCm: 48, heightCm: 57 }),
		cm3: (57 * (61 ** 2 + 48 ** 2 + 61 * 48)) / 3,
	},
	{
		name: 'prismatoid h (A + 4 M + B) / 6',
		of: vessel({ shape: 'trough', topCm: 104, topDepthCm: 35, bottomCm: 97, bottomDepthCm: 22, heightCm: 39 }),
		cm3: (39 * (104 * 35 + 4 * 100.5 * 28.5 + 97 * 22)) / 6,
	},
	{
		name: 'box a b c',
		of: vessel({
			shape: 'window box',
			topCm: 91,
			topDepthCm: 23,
			bottomCm: 91,
			bottomDepthCm: 23,
			heightCm: 21,
			wallCm: 1.5,
			headspaceCm: 4,
		}),
		cm3: 88 * 20 * 15.5,
	},
	{
		name: 'column that widens downwards',
		of: vessel({ shape: 'column', topCm: 30, topDepthCm: 30, bottomCm: 40, bottomDepthCm: 40, heightCm: 90 }),
		cm3: (90 * (30 ** 2 + 40 ** 2 + 30 * 40)) / 3,
	},
	{
		name: 'half a sphere 2 π r³ / 3',
		of: vessel({ shape: 'bowl', topCm: 54, bottomCm: 18, heightCm: 27 }),
		cm3: (2 * PI * 27 ** 3) / 3,
	},
	{
		name: 'cap of a sphere π h² (3 R − h) / 3',
		of: vessel({ shape: 'bowl', topCm: 66, bottomCm: 20, heightCm: 20, wallCm: 3 }),
		// rim 30 and depth 17 are of a sphere of (900 + 289) / 34
		cm3: (PI * 17 ** 2 * (3 * (1189 / 34) - 17)) / 3,
	},
	{
		name: 'bowl of an urn, a frustum',
		of: vessel({ shape: 'urn', topCm: 52, bottomCm: 30, heightCm: 60, wallCm: 2 }),
		cm3: (PI * 34 * (24 ** 2 + 24 * 13 + 13 ** 2)) / 3,
	},
	{
		name: 'above a false bottom: of a cylinder',
		of: vessel({ topCm: 48, bottomCm: 48, heightCm: 80, wallCm: 1, headspaceCm: 6, soilDepthCm: 31 }),
		cm3: PI * 23 ** 2 * 31,
	},
]

describe('the volume of soil', () => {
	test.each(solids)('$name: the closed form', ({ of, cm3 }) => {
		expect(Math.abs(soilCm3(of) / cm3 - 1)).toBeLessThan(1e-12)
	})

	test.each(solids.map((each, n) => ({ ...each, seed: 20_261_124 + n })))(
		'$name: points thrown at random',
		({ of, seed }) => {
			const { cm3, error } = thrown(of, 60_000, seed)
			expect(Math.abs(soilCm3(of) - cm3)).toBeLessThan(4 * error)
			expect(error / cm3).toBeLessThan(0.01)
		},
	)

	// Pages for gardeners take the mean diameter of a tapered pot: too low by π h (R − r)² / 12.
	test('a mean diameter would be too low', () => {
		const of = vessel({ topCm: 46, bottomCm: 30, heightCm: 40 })
		const mean = PI * 19 ** 2 * 40
		expect(soilCm3(of) - mean).toBeCloseTo((PI * 40 * (23 - 15) ** 2) / 12, 6)
	})
})
