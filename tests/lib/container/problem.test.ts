import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Vessel } from '@/lib/container/card'
import { faultsOf } from '@/lib/container/problem'
import { innerOpeningCm2, soilCm3 } from '@/lib/container/soil'
import { problemOf } from './problem-of'
import { vessel, vessels } from './sample'

const pot = vessel({ topCm: 46, bottomCm: 33, heightCm: 41, wallCm: 1, headspaceCm: 5 })
const box = vessel({
	shape: 'window box',
	topCm: 91,
	topDepthCm: 23,
	bottomCm: 89,
	bottomDepthCm: 21,
	heightCm: 20,
	wallCm: 2,
	headspaceCm: 4,
})

describe('measures that are wrong', () => {
	test.each<{ name: string; of: Vessel; sill?: number; says: string }>([
		{ name: 'no width', of: { ...pot, topCm: 0 }, says: 'The width at the rim is nothing: measure it.' },
		{
			name: 'a width below nothing',
			of: { ...pot, bottomCm: -33 },
			says: 'The width at the foot cannot be less than nothing.',
		},
		{ name: 'no depth of a box', of: { ...box, topDepthCm: 0 }, says: 'The depth at the rim is nothing: measure it.' },
		{
			name: 'a depth below nothing',
			of: { ...box, bottomDepthCm: -2 },
			says: 'The depth at the foot cannot be less than nothing.',
		},
		{ name: 'no number', of: { ...pot, heightCm: Number.NaN }, says: 'The height is not a number: measure it again.' },
		{
			name: 'without end',
			of: { ...pot, topCm: Number.POSITIVE_INFINITY },
			says: 'The width at the rim is not a number: measure it again.',
		},
		{
			name: 'millimetres',
			of: { ...pot, heightCm: 610 },
			says: 'The height is more than any container measures: was it typed in another unit?',
		},
		{
			name: 'a thimble',
			of: { ...pot, topCm: 4.8 },
			says: 'The width at the rim is less than any container measures: was it typed in another unit?',
		},
		{
			name: 'a wall of a castle',
			of: { ...pot, wallCm: 20.5 },
			says: 'The thickness of the wall is more than any container measures: was it typed in another unit?',
		},
		{
			name: 'inches that fill it to the rim: 1 of floor and 5 above the soil in 6',
			of: { ...pot, heightCm: 15.24, wallCm: 2.54, headspaceCm: 12.7 },
			says: 'The space from soil to rim is deeper than the pot: no soil would fit.',
		},
		{
			name: 'a wall below nothing',
			of: { ...pot, wallCm: -1 },
			says: 'The thickness of the wall cannot be less than nothing.',
		},
		{
			name: 'a headspace below nothing',
			of: { ...pot, headspaceCm: -5 },
			says: 'The space from soil to rim cannot be less than nothing.',
		},
		{ name: 'no soil at all', of: { ...pot, soilDepthCm: 0 }, says: 'The depth of the soil is nothing: measure it.' },
		{ name: 'no glass', of: box, sill: 0, says: 'The height from sill to glass is nothing: measure it.' },
		{
			name: 'walls thicker than the pot',
			of: { ...pot, wallCm: 16.5 },
			says: 'The walls are thicker than the pot: nothing would be left inside.',
		},
		{
			name: 'walls thicker than a box is deep',
			of: { ...box, wallCm: 10.5 },
			says: 'The walls are thicker than the pot: nothing would be left inside.',
		},
		{
			name: 'a headspace as deep as the pot',
			of: { ...pot, headspaceCm: 40 },
			says: 'The space from soil to rim is deeper than the pot: no soil would fit.',
		},
		{
			name: 'a headspace deeper than the bowl of an urn',
			of: { ...pot, shape: 'urn', heightCm: 30, headspaceCm: 17 },
			says: 'The space from soil to rim is deeper than the bowl of the urn: no soil would fit.',
		},
		{
			name: 'a floor thicker than the pot',
			of: { ...pot, heightCm: 6, wallCm: 7 },
			says: 'The floor is thicker than the pot is high.',
		},
		{
			name: 'more soil than pot',
			of: { ...pot, soilDepthCm: 42 },
			says: 'The soil cannot be deeper than the pot is high.',
		},
		{
			name: 'a bowl deeper than half a sphere',
			of: { ...pot, shape: 'bowl', heightCm: 24 },
			says: 'A bowl is at most half as high as it is wide: call a deeper one a round pot.',
		},
		{
			name: 'a bowl on a foot wider than itself',
			of: { ...pot, shape: 'bowl', heightCm: 20, bottomCm: 46 },
			says: 'A bowl stands on a foot narrower than its rim.',
		},
		{
			name: 'a round pot with a depth',
			of: { ...pot, topDepthCm: 40 },
			says: 'A round vessel has a width and no depth.',
		},
	])('$name', ({ of, sill, says }) => {
		expect(problemOf(of, sill ?? null)).toEqual([says])
	})

	test('every measure that is wrong is named at once', () => {
		expect(problemOf({ ...box, topCm: 0, heightCm: -4, wallCm: Number.NaN })).toHaveLength(3)
	})
})

describe('each is told beside the measure that mends it', () => {
	test.each([
		{ name: 'walls', of: { ...pot, wallCm: 16.5 }, field: 'wallCm' },
		{ name: 'a floor', of: { ...pot, heightCm: 6, wallCm: 7 }, field: 'wallCm' },
		{ name: 'a headspace', of: { ...pot, headspaceCm: 40 }, field: 'headspaceCm' },
		{ name: 'soil', of: { ...pot, soilDepthCm: 42 }, field: 'soilDepthCm' },
		{ name: 'a foot', of: { ...pot, bottomCm: 0 }, field: 'bottomCm' },
		{ name: 'a deep bowl', of: { ...pot, shape: 'bowl' as const, heightCm: 24 }, field: 'heightCm' },
	])('$name', ({ of, field }) => {
		expect(faultsOf(of).map((fault) => fault.field)).toEqual([field])
	})
})

describe('measures that are well', () => {
	test.each<{ name: string; of: Vessel; sill?: number }>([
		{ name: 'a tapered pot', of: pot },
		{ name: 'a box under a window', of: box, sill: 35 },
		{
			name: 'a column wider at its foot',
			of: vessel({ shape: 'column', topCm: 30, bottomCm: 38, heightCm: 90, wallCm: 2 }),
		},
		{ name: 'half a sphere', of: vessel({ shape: 'bowl', topCm: 54, bottomCm: 18, heightCm: 27, wallCm: 1 }) },
		{
			name: 'a bowl whose foot is thinner than its walls',
			of: vessel({ shape: 'bowl', topCm: 40, bottomCm: 5, heightCm: 12, wallCm: 3 }),
		},
		{ name: 'a false bottom', of: { ...pot, soilDepthCm: 28 } },
		{ name: 'walls too thin to measure', of: { ...pot, wallCm: 0, headspaceCm: 0 } },
	])('$name', ({ of, sill }) => {
		expect(problemOf(of, sill ?? null)).toEqual([])
	})
})

describe('laws', () => {
	const any = fc.oneof(
		fc.double({ min: -50, max: 2000 }),
		fc.constantFrom(0, -0, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e-9, 1e300),
	)

	test('a vessel without a problem holds soil, and less than its outside', () => {
		fc.assert(
			fc.property(vessels, (of) => {
				fc.pre(problemOf(of).length === 0)
				const outsideCm3 =
					Math.max(of.topCm, of.bottomCm) *
					Math.max(of.topDepthCm ?? of.topCm, of.bottomDepthCm ?? of.bottomCm) *
					of.heightCm
				expect(soilCm3(of)).toBeGreaterThan(0)
				expect(soilCm3(of)).toBeLessThanOrEqual(outsideCm3 * (1 + 1e-12))
				expect(innerOpeningCm2(of)).toBeGreaterThan(0)
			}),
			{ numRuns: 500 },
		)
	})

	test('whatever is typed: a sentence, or something that can be computed with', () => {
		fc.assert(
			fc.property(
				vessels,
				fc.record({ topCm: any, bottomCm: any, heightCm: any, wallCm: any, headspaceCm: any }),
				(of, typed) => {
					const odd = { ...of, ...typed }
					const found = problemOf(odd)
					for (const says of found) expect(says).toMatch(/^[A-Z].*[.?]$/)
					if (found.length === 0) expect(soilCm3(odd)).toBeGreaterThan(0)
					if (Object.values(typed).some((value) => !(value >= 0 && value <= 1000))) expect(found).not.toEqual([])
				},
			),
			{ numRuns: 1000 },
		)
	})
})
