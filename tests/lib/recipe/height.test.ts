import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { heightBand, holdCm, reachCm, standingCm, tallestCm } from '@/lib/recipe/height'
import { pot, pots } from './grow/pots'
import { branch, plant } from './sample'

const under = (of: ReturnType<typeof pot>, sillToGlassCm: number | null = null) => ({ ...of, sillToGlassCm })

/** Outside 48 across inside 44, 50 high: √(50 × 44) is 46.904. */
const round = under({ ...pot([18, null, 18]), topCm: 48, heightCm: 50, wallCm: 2 })
const box = { ...pot([36, 8, 8], { shape: 'window box', wallCm: 2 }), topDepthCm: 24, heightCm: 20 } // √(20 × 20)

// Common practice, no published source.
describe('how high the tallest may stand above the rim', () => {
	test.each([
		{ name: 'a round pot', at: round, band: [56.285, 70.356, 93.808] },
		{ name: 'a box, by its smaller width', at: under(box), band: [24, 30, 40] },
		{ name: 'a box under a window', at: under(box, 33), band: [24, 30, 33] },
		{ name: 'a box right under the glass', at: under(box, 22), band: [22, 22, 22] },
	])('$name', ({ at, band }) => {
		const { lowCm, bestCm, highCm } = heightBand(at)
		for (const [n, cm] of [lowCm, bestCm, highCm].entries()) expect(cm).toBeCloseTo(band[n] ?? 0, 3)
		expect(tallestCm(at)).toBe(bestCm)
	})

	test('never falls when the pot gets higher or wider', () => {
		fc.assert(
			fc.property(pots, fc.integer({ min: 1, max: 50 }), (of, by) => {
				const at = under(of)
				expect(tallestCm({ ...at, heightCm: at.heightCm + by })).toBeGreaterThan(tallestCm(at))
				const wider = { ...at, topCm: at.topCm + by, topDepthCm: at.topDepthCm === null ? null : at.topDepthCm + by }
				expect(tallestCm(wider)).toBeGreaterThan(tallestCm(at))
				expect(tallestCm({ ...at, sillToGlassCm: by })).toBeLessThanOrEqual(by)
			}),
		)
	})
})

// Common practice, no published source.
describe('how deep it has to stand in the soil', () => {
	test.each([
		{ name: 'fifteen at least', above: 60, deep: 40, hold: 15 },
		{ name: 'a fifth of what rises above', above: 110, deep: 40, hold: 22 },
		{ name: 'two short of the floor at most', above: 110, deep: 21, hold: 19 },
		{ name: 'a bowl', above: 50, deep: 11, hold: 9 },
		{ name: 'hardly any soil', above: 50, deep: 1.5, hold: 0 },
	])('$name', ({ above, deep, hold }) => {
		expect(holdCm(above, deep)).toBe(hold)
	})
})

describe('how far a piece rises above the rim', () => {
	// the soil of the round pot: 50 − 2 of floor − 5 of headspace is 43 deep
	test.each([
		{
			name: 'a short stem keeps fifteen in the soil and five below the rim',
			of: branch(1, 'dogwood', { lengthCm: 70 }),
			reach: 50,
			stands: 50,
		},
		{
			name: 'a long one keeps a sixth of itself, and is cut to what looks best',
			of: branch(1, 'birch', { lengthCm: 150 }),
			reach: 120,
			stands: 70.356,
		},
		{
			name: 'a plant stands on the soil, and is not cut',
			of: plant(2, 'grass', { lengthCm: 110 }),
			reach: 105,
			stands: 105,
		},
		{ name: 'a stem that drowns in the pot', of: branch(1, 'twig', { lengthCm: 14 }), reach: 0, stands: 0 },
	])('$name', ({ of, reach, stands }) => {
		expect(reachCm(of, round)).toBeCloseTo(reach, 9)
		expect(standingCm(of, round)).toBeCloseTo(stands, 3)
	})

	test('nobody knows of what has no length', () => {
		expect([reachCm(branch(1, 'birch', { lengthCm: null }), round), standingCm(plant(2, 'kale'), round)]).toEqual([
			null,
			null,
		])
	})

	test('the hold of a stem at its full reach is what it needs there', () => {
		fc.assert(
			fc.property(pots, fc.integer({ min: 30, max: 300 }), (of, lengthCm) => {
				const at = { ...of, headspaceCm: 0 }
				const deep = at.heightCm - at.wallCm
				fc.pre(at.shape !== 'urn' && deep > 20)
				const above = reachCm(branch(1, 'birch', { lengthCm }), at) ?? 0
				expect(lengthCm - above).toBeCloseTo(holdCm(above, deep), 9)
			}),
		)
	})
})
