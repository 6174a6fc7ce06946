import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isRound } from '@/lib/container/card'
import { hollow, soilWithin } from '@/lib/container/measured/hollow'
import { type Level, outline } from '@/lib/container/outline'
import { soilCm3, soilDepthCm } from '@/lib/container/soil'
import { problemOf } from '../problem-of'
import { vessel, vessels } from '../sample'

const pot = vessel({ topCm: 46, bottomCm: 34, heightCm: 41, wallCm: 2, headspaceCm: 5 })
const bowl = vessel({ shape: 'bowl', topCm: 42, bottomCm: 14, heightCm: 16, wallCm: 1, headspaceCm: 3 })

/** Turned round its axis, frustum upon frustum. */
function turnedCm3(levels: readonly Level[]): number {
	return levels.slice(1).reduce((sum, { heightCm, halfCm: b }, n) => {
		const { heightCm: from, halfCm: a } = levels[n] ?? { heightCm, halfCm: b }
		return sum + (Math.PI * (heightCm - from) * (a * a + a * b + b * b)) / 3
	}, 0)
}

describe('cut open', () => {
	test('a pot is hollow within its walls and above its floor', () => {
		expect(hollow(pot)).toEqual([
			{ heightCm: 2, halfCm: 15 },
			{ heightCm: 41, halfCm: 21 },
		])
	})

	test('its soil lies under the headspace, above a false bottom where there is one', () => {
		expect(soilWithin(pot).map(({ heightCm }) => heightCm)).toEqual([2, 36])
		expect(soilWithin({ ...pot, soilDepthCm: 20 }).map(({ heightCm }) => heightCm)).toEqual([16, 36])
	})

	test.each([
		['a pot', pot],
		['a pot with a false bottom', { ...pot, soilDepthCm: 17 }],
		['a bowl', bowl],
	])('of %s the soil that is drawn is the soil that is weighed', (_, of) => {
		expect(turnedCm3(soilWithin(of)) / soilCm3(of)).toBeCloseTo(1, 2)
	})

	test('what is hollow stays inside, and the soil as deep as it is', () => {
		fc.assert(
			fc.property(
				vessels.filter((of) => problemOf(of).length === 0),
				(of) => {
					const widest = Math.max(...outline(of).map(({ halfCm }) => halfCm))
					for (const { heightCm, halfCm } of hollow(of)) {
						expect(halfCm).toBeLessThanOrEqual(widest + 1e-9)
						expect(heightCm).toBeLessThanOrEqual(of.heightCm + 1e-9)
						expect(halfCm).toBeGreaterThanOrEqual(isRound(of.shape) ? 0 : 1e-9)
					}
					const [first, last] = [soilWithin(of)[0], soilWithin(of).at(-1)]
					expect((last?.heightCm ?? 0) - (first?.heightCm ?? 0)).toBeCloseTo(soilDepthCm(of), 6)
				},
			),
			{ numRuns: 300 },
		)
	})
})
