import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { shareOut } from '@/lib/recipe/grow/share-out'

const shares = (total: number, weights: readonly number[]) => {
	const parts = weights.map((weight, at) => ({ at, weight, tie: String.fromCharCode(97 + at) }))
	const shared = shareOut(total, parts)
	return parts.map(({ at }) => shared.get(at))
}

describe('a total over kinds', () => {
	test.each([
		{ name: 'in proportion', total: 20, weights: [9, 6, 5], is: [9, 6, 5] },
		{
			name: 'what is left to the largest remainders: 20.7, 13.8, 11.5',
			total: 46,
			weights: [9, 6, 5],
			is: [21, 14, 11],
		},
		{ name: 'a tie to the first by name', total: 7, weights: [4, 4], is: [4, 3] },
		{ name: 'each at least one', total: 5, weights: [40, 1, 1], is: [3, 1, 1] },
		{ name: 'as many as there are kinds', total: 3, weights: [40, 1, 7], is: [1, 1, 1] },
		{ name: 'none', total: 0, weights: [], is: [] },
	])('$name', ({ total, weights, is }) => {
		expect(shares(total, weights)).toEqual(is)
	})

	// The Alabama paradox of this method: one more in all, and a kind has one fewer. The sum never falls.
	test('one more in all may move one from kind to kind', () => {
		expect(shares(10, [6, 6, 2])).toEqual([4, 4, 2])
		expect(shares(11, [6, 6, 2])).toEqual([5, 5, 1])
	})

	test('the shares sum to the total, and each is within one of its quota or is one', () => {
		const weights = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 8 })
		fc.assert(
			fc.property(weights, fc.integer({ min: 0, max: 200 }), (of, more) => {
				const total = of.length + more
				const whole = of.reduce((sum, each) => sum + each, 0)
				const found = shares(total, of).map((each) => each ?? 0)
				expect(found.reduce((sum, each) => sum + each, 0)).toBe(total)
				const hasShort = found.includes(1)
				for (const [n, share] of found.entries()) {
					expect(share).toBeGreaterThanOrEqual(1)
					const quota = (total * (of[n] ?? 0)) / whole
					if (!hasShort) expect(Math.abs(share - quota)).toBeLessThan(1)
				}
			}),
		)
	})
})
