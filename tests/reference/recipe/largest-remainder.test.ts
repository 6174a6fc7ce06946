import { expect, test } from 'vitest'
import { shareOut } from '@/lib/recipe/grow/share-out'

const shares = (total: number, weights: readonly number[]) => {
	const parts = weights.map((weight, at) => ({ at, weight, tie: String(at).padStart(2, '0') }))
	const shared = shareOut(total, parts)
	return parts.map(({ at }) => shared.get(at))
}

// electowiki.org, Hamilton's method: the United States House of 1790 as if it had 60 seats, from Virginia to Delaware.
test('sixty seats of 1790', () => {
	const people = [
		630560, 475327, 432879, 353523, 331589, 278514, 236841, 206236, 179570, 141822, 85533, 70835, 68705, 68446, 55540,
	]
	expect(shares(60, people)).toEqual([11, 8, 7, 6, 6, 5, 4, 3, 3, 2, 1, 1, 1, 1, 1])
})

// A worked answer of solvely.ai: quotas 6.088, 4.560, 11.313, 9.859 and 10.180.
test('forty-two seats', () => {
	expect(shares(42, [247000, 185000, 459000, 400000, 413000])).toEqual([6, 5, 11, 10, 10])
})
