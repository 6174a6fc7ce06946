import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Vessel } from '@/lib/container/card'
import { type Level, outline } from '@/lib/container/outline'
import { problemOf } from './problem-of'
import { vessel, vessels } from './sample'

const first = (levels: readonly Level[]) => levels[0]
const last = (levels: readonly Level[]) => levels.at(-1)

/** Turned round its axis, frustum upon frustum. */
function turnedCm3(levels: readonly Level[]): number {
	return levels.slice(1).reduce((sum, { heightCm, halfCm: b }, n) => {
		const { heightCm: from, halfCm: a } = levels[n] ?? { heightCm, halfCm: b }
		return sum + (Math.PI * (heightCm - from) * (a * a + a * b + b * b)) / 3
	}, 0)
}

describe('the silhouette', () => {
	test('a tapered pot is a trapezium', () => {
		expect(outline(vessel({ topCm: 46, bottomCm: 34, heightCm: 41 }))).toEqual([
			{ heightCm: 0, halfCm: 17 },
			{ heightCm: 41, halfCm: 23 },
		])
	})

	test('a column may be wider at its foot', () => {
		const column = vessel({ shape: 'column', topCm: 30, topDepthCm: 28, bottomCm: 36, bottomDepthCm: 33, heightCm: 92 })
		expect(outline(column).map(({ halfCm }) => halfCm)).toEqual([18, 15])
	})

	test('a bowl is an arc of a circle above its foot ring', () => {
		const bowl = vessel({ shape: 'bowl', topCm: 40, bottomCm: 12, heightCm: 10 })
		const levels = outline(bowl)
		// a cap 40 across and 10 high is of a sphere of 25
		for (const { heightCm, halfCm } of levels.filter((level) => level.halfCm > 6)) {
			expect(Math.hypot(halfCm, 25 - heightCm)).toBeCloseTo(25, 9)
		}
		expect(levels.every(({ halfCm }) => halfCm >= 6)).toBe(true)
		expect(first(levels)).toEqual({ heightCm: 0, halfCm: 6 })
		expect(last(levels)?.heightCm).toBeCloseTo(10, 9)
		expect(last(levels)?.halfCm).toBeCloseTo(20, 9)
	})

	test('half a sphere ends upright', () => {
		const levels = outline(vessel({ shape: 'bowl', topCm: 54, bottomCm: 0.1, heightCm: 27 }))
		expect(turnedCm3(levels) / ((2 * Math.PI * 27 ** 3) / 3)).toBeCloseTo(1, 2)
	})

	describe('an urn', () => {
		const urn = vessel({ shape: 'urn', topCm: 50, bottomCm: 28, heightCm: 60 })
		const levels = outline(urn)
		const halves = (from: number, to: number) =>
			levels.filter(({ heightCm }) => heightCm >= from && heightCm <= to).map(({ halfCm }) => halfCm)

		test('stands on a foot, has a stem, and opens to its lip', () => {
			expect(first(levels)).toEqual({ heightCm: 0, halfCm: 14 })
			expect(Math.min(...halves(12, 15))).toBeCloseTo(14 * 0.45, 6)
			expect(last(levels)?.heightCm).toBeCloseTo(60, 9)
			expect(last(levels)?.halfCm).toBeCloseTo(25, 6)
			expect(Math.max(...levels.map(({ halfCm }) => halfCm))).toBeCloseTo(25, 6)
		})

		test('swells below, draws in under the lip, and has the volume of the frustum that holds its soil', () => {
			const bowl = levels.filter(({ heightCm }) => heightCm >= 24 - 1e-9)
			const frustum = (Math.PI * 36 * (25 ** 2 + 25 * 14 + 14 ** 2)) / 3
			expect(Math.abs(turnedCm3(bowl) / frustum - 1)).toBeLessThan(0.02)
			expect(halves(32, 34).every((half) => half > 14 + 11 * (8 / 36))).toBe(true)
			expect(halves(50, 52).every((half) => half < 14 + 11 * (28 / 36))).toBe(true)
		})
	})

	test('begins on the ground, rises to the rim, and never turns inside out', () => {
		const sound = (of: Vessel) => problemOf(of).length === 0
		fc.assert(
			fc.property(vessels.filter(sound), (of) => {
				const levels = outline(of)
				expect(first(levels)?.heightCm).toBe(0)
				expect(last(levels)?.heightCm).toBeCloseTo(of.heightCm, 6)
				expect(last(levels)?.halfCm).toBeCloseTo(of.topCm / 2, 6)
				for (const [n, level] of levels.entries()) {
					expect(level.halfCm).toBeGreaterThan(0)
					expect(level.heightCm).toBeGreaterThanOrEqual(levels[n - 1]?.heightCm ?? 0)
				}
			}),
			{ numRuns: 300 },
		)
	})
})
