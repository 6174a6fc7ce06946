import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isLong, placesAlong, viewedFaces } from '@/lib/container/along'
import { type Stand, stands, type Vessel } from '@/lib/container/card'
import { rimCm } from '@/lib/container/inner'
import { visible } from '@/lib/container/visible'
import { vessel, vessels } from './sample'

const round = vessel({ topCm: 50 })
const square = vessel({ shape: 'square', topCm: 60, topDepthCm: 60 })
const planter = vessel({ shape: 'rectangular', topCm: 70, topDepthCm: 45 })
const box = vessel({ shape: 'window box', topCm: 94, topDepthCm: 24, wallCm: 2 })

// Common practice, no published source.
describe('what is seen', () => {
	test.each<{ name: string; of: Vessel; at: Stand; greens: number; rim: number }>([
		{ name: 'a round pot, all of it', of: round, at: 'all round', greens: 1, rim: 1 },
		{ name: 'a round pot by a wall', of: round, at: 'against a wall', greens: 0.8, rim: 0.6 },
		{ name: 'a round pot in a corner', of: round, at: 'in a corner', greens: 0.65, rim: 0.4 },
		{ name: 'a square by a wall: three of its sides', of: square, at: 'against a wall', greens: 0.8, rim: 0.75 },
		{ name: 'a square in a corner: two', of: square, at: 'in a corner', greens: 0.65, rim: 0.5 },
		{ name: 'a planter, all of it', of: planter, at: 'all round', greens: 1, rim: 1 },
		{ name: 'a planter by a wall', of: planter, at: 'against a wall', greens: 0.8, rim: (70 + 90) / 230 },
		{ name: 'a box by a wall, inside', of: box, at: 'against a wall', greens: 0.8, rim: (90 + 40) / 220 },
	])('$name', ({ of, at, greens, rim }) => {
		const seen = visible(of, at)
		expect(seen.greens).toBe(greens)
		expect(seen.rim).toBeCloseTo(rim, 9)
		expect(seen.rimCm).toBeCloseTo(rim * rimCm(of), 9)
	})

	test('never more by a wall than all round, nor in a corner than by a wall', () => {
		fc.assert(
			fc.property(vessels, (of) => {
				const [all, wall, corner] = stands.map((at) => visible(of, at))
				expect(wall?.rimCm).toBeLessThanOrEqual(all?.rimCm ?? 0)
				expect(corner?.rimCm).toBeLessThanOrEqual(wall?.rimCm ?? 0)
				expect(wall?.greens).toBeLessThan(all?.greens ?? 0)
				expect(corner?.greens).toBeLessThan(wall?.greens ?? 0)
			}),
		)
	})
})

// Common practice, no published source.
describe('faces', () => {
	test.each<{ name: string; of: Vessel; faces: readonly [number, number, number] }>([
		{ name: 'round', of: round, faces: [3, 1, 2] },
		{ name: 'an urn is round', of: vessel({ shape: 'urn' }), faces: [3, 1, 2] },
		{ name: 'square', of: square, faces: [4, 1, 2] },
		{ name: 'a planter that is not twice as long as deep', of: planter, faces: [4, 1, 2] },
		{ name: 'a long box by its front: 90 ÷ 35', of: box, faces: [3, 3, 3] },
		{
			name: 'a trough along a shop front: 216 ÷ 35',
			of: vessel({ shape: 'trough', topCm: 220, topDepthCm: 40, wallCm: 2 }),
			faces: [7, 7, 7],
		},
	])('$name', ({ of, faces }) => {
		expect(stands.map((at) => viewedFaces(of, at))).toEqual(faces)
	})

	test.each<{ name: string; of: Vessel; long: boolean; places: number }>([
		{
			name: 'twice as long as deep inside',
			of: vessel({ shape: 'trough', topCm: 84, topDepthCm: 44, wallCm: 2 }),
			long: true,
			places: 3,
		},
		{ name: 'twice as long outside, and inside as well', of: box, long: true, places: 3 },
		{
			name: 'a little short of it',
			of: vessel({ shape: 'trough', topCm: 79.9, topDepthCm: 40 }),
			long: false,
			places: 3,
		},
		{
			name: 'a short window box',
			of: vessel({ shape: 'window box', topCm: 45, topDepthCm: 20 }),
			long: true,
			places: 1,
		},
		{ name: 'a wide bowl is round', of: vessel({ shape: 'bowl', topCm: 120 }), long: false, places: 3 },
	])('long: $name', ({ of, long, places }) => {
		expect(isLong(of)).toBe(long)
		expect(placesAlong(of)).toBe(places)
	})
})
