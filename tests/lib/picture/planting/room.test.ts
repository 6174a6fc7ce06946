import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { shapes, type Vessel } from '@/lib/container/card'
import { outline } from '@/lib/container/outline'
import { roomCm } from '@/lib/picture/planting/bed'

const vessel = (shape: Vessel['shape'], topCm: number, bottomCm: number, heightCm: number) => ({
	...{ shape, topCm, bottomCm, heightCm, topDepthCm: null, bottomDepthCm: null, wallCm: 2, headspaceCm: 5 },
	...{ soilDepthCm: null, sillToGlassCm: null },
})

const anyPot = fc
	.record({
		shape: fc.constantFrom(...shapes),
		topCm: fc.double({ min: 20, max: 100, noNaN: true }),
		taper: fc.double({ min: 0.3, max: 1, noNaN: true }),
		heightCm: fc.double({ min: 15, max: 120, noNaN: true }),
	})
	.map(({ shape, topCm, taper, heightCm }) => vessel(shape, topCm, topCm * taper, heightCm))

/** Half of the width at so many cm below the rim, straight from level to level. */
function halfAt(pot: ReturnType<typeof vessel>, depth: number): number {
	const levels = outline(pot)
	const at = pot.heightCm - depth
	const found = levels.findIndex(({ heightCm }) => heightCm >= at)
	const above = found === -1 ? levels.length - 1 : found
	const [low, high] = [levels[Math.max(0, above - 1)], levels[above]]
	if (low === undefined || high === undefined) return 0
	const part = high.heightCm === low.heightCm ? 1 : (at - low.heightCm) / (high.heightCm - low.heightCm)
	return low.halfCm + (high.halfCm - low.halfCm) * part
}

describe('room for a foot', () => {
	test('a straight pot has it to the ground, anywhere within', () => {
		expect(roomCm(vessel('round', 40, 40, 38), 15)).toBe(38)
	})

	test('a tapering pot has less towards its side', () => {
		expect(roomCm(vessel('round', 40, 20, 40), 15)).toBeCloseTo(20, 10)
		expect(roomCm(vessel('round', 40, 20, 40), 0)).toBe(40)
	})

	test('an urn ends with its bowl for whatever stands wider than its stem', () => {
		const pot = vessel('urn', 40, 22, 50)
		expect(roomCm(pot, 12)).toBeLessThan(pot.heightCm * 0.8)
		expect(roomCm(pot, 12)).toBeGreaterThan(0)
	})

	test('nothing that stands in it shows beside the vessel, all the way down to its foot', () => {
		fc.assert(
			fc.property(
				anyPot,
				fc.double({ min: -1, max: 1, noNaN: true }),
				fc.double({ min: 0, max: 1, noNaN: true }),
				(pot, u, part) => {
					const x = (u * pot.topCm) / 2
					expect(halfAt(pot, roomCm(pot, x) * part)).toBeGreaterThanOrEqual(Math.abs(x) - 1e-6)
				},
			),
			{ numRuns: 500 },
		)
	})

	test('closer to the middle there is never less', () => {
		fc.assert(
			fc.property(
				anyPot,
				fc.double({ min: 0, max: 1, noNaN: true }),
				fc.double({ min: 0, max: 1, noNaN: true }),
				(pot, u, part) => {
					const x = (u * pot.topCm) / 2
					expect(roomCm(pot, x * part)).toBeGreaterThanOrEqual(roomCm(pot, x) - 1e-9)
				},
			),
			{ numRuns: 300 },
		)
	})
})
