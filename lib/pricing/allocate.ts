import { type Cents, cents } from '@/lib/units/cents'

/**
 * Splits `total` over `weights` so that the shares sum to it exactly: each gets its whole quota, and the cents
 * left go to the largest remainders, the earlier first on a tie (largest remainder, or Hamilton's method).
 * Where every weight is zero the first share takes all.
 * @throws when a weight is negative or not a whole number, or there is none
 */
export function allocate(total: Cents, weights: readonly number[]): Cents[] {
	if (weights.length === 0) throw new Error('allocate: there is nothing to split over')
	const whole = weights.map((weight) => {
		if (!Number.isSafeInteger(weight) || weight < 0) throw new Error(`allocate: ${weight} is no weight`)
		return BigInt(weight)
	})
	const sign = total < 0 ? -1 : 1
	const amount = BigInt(Math.abs(total))
	const of = whole.reduce((sum, weight) => sum + weight, 0n)
	if (of === 0n) return weights.map((_, index) => cents(index === 0 ? total : 0))
	const quotas = whole.map((weight, index) => ({
		index,
		floor: (amount * weight) / of,
		rest: (amount * weight) % of,
	}))
	const left = Number(amount - quotas.reduce((sum, { floor }) => sum + floor, 0n))
	const first = new Set(
		quotas
			.toSorted((a, b) => (a.rest === b.rest ? a.index - b.index : a.rest > b.rest ? -1 : 1))
			.slice(0, left)
			.map(({ index }) => index),
	)
	return quotas.map(({ index, floor }) => cents(sign * (Number(floor) + (first.has(index) ? 1 : 0))))
}
