import { afterAll, describe, expect, test } from 'vitest'
import { soilCm3 } from '@/lib/container/soil'
import { cmPerInch } from '@/lib/format/length'
import { litresPerDryQuart } from '@/lib/format/volume'
import { vessel } from '../../lib/container/sample'

// Quarts of potting mix by the width of a round pot. No table of a university could be found; these two are of the trade
// (weak sources) and differ from each other by up to 2 times: bands, not figures to agree with.
// A: Star Nursery, Star-Tip 1026, 2006. B: knowitgrowit.blogspot.com, which gathers several charts (low to high).
const tables = [
	{ rim: 8, a: 3, b: [4, 6] },
	{ rim: 10, a: 5, b: [9, 10] },
	{ rim: 12, a: 12, b: [14, 18] },
	{ rim: 16, a: 22, b: [22, 22] },
	{ rim: 24, a: 36, b: [36, 36] },
	{ rim: 36, a: 96, b: [96, 96] },
] as const

/** A thin pot whose floor is two thirds of its rim, in dry quarts. */
function taperedQuarts(rim: number, high: number): number {
	const [topCm, heightCm] = [rim * cmPerInch, high * cmPerInch]
	return soilCm3(vessel({ topCm, bottomCm: (topCm * 2) / 3, heightCm })) / 1000 / litresPerDryQuart
}

const spread = (values: readonly number[]) => Math.max(...values) / Math.min(...values)

describe('published quarts of potting mix', () => {
	test.each(tables.filter(({ rim }) => rim <= 12))(
		'$rim inches: geometry of a pot as high as wide lies in the band',
		({ rim, a, b }) => {
			const quarts = taperedQuarts(rim, rim)
			expect(quarts).toBeGreaterThanOrEqual(Math.min(a, ...b))
			expect(quarts).toBeLessThanOrEqual(Math.max(a, ...b))
			expect(spread([a, ...b])).toBeLessThanOrEqual(2)
		},
	)

	// Wide pots are sold low: a table by width alone cannot know, so the card asks for the height.
	test.each([
		{ rim: 16, high: 10.45 },
		{ rim: 24, high: 7.6 },
		{ rim: 36, high: 9.01 },
	])('$rim inches: the table speaks of a pot $high inches high', ({ rim, high }) => {
		const said = tables.find((row) => row.rim === rim)?.a ?? 0
		expect(taperedQuarts(rim, high) / said).toBeCloseTo(1, 2)
		expect(taperedQuarts(rim, rim)).toBeGreaterThan(1.5 * said)
	})

	// A real tapered pot of 12 inches: 8 to 12 dry quarts on one page of biologyinsights.com, 10 to 12 on another.
	test('a real pot of 12 inches, a little lower than wide and not full', () => {
		expect(taperedQuarts(12, 9.5)).toBeGreaterThanOrEqual(8)
		expect(taperedQuarts(12, 9.5)).toBeLessThanOrEqual(12)
	})

	afterAll(() => {
		const rows = tables.map(({ rim, a, b }) => {
			const [high, wide] = [taperedQuarts(rim, rim).toFixed(1), spread([a, ...b]).toFixed(2)]
			return `${rim} in: A ${a}, B ${b[0]}–${b[1]} qt, tapered as high as wide ${high} dry qt; spread of the sources ${wide}×`
		})
		process.stdout.write(`${rows.join('\n')}\n`)
	})
})
