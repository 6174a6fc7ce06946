/** `tie` decides between parts whose remainders are the same. */
export type Part = { readonly at: number; readonly weight: number; readonly tie: string }
type Shares = ReadonlyMap<number, number>

/** Whole numbers that sum to `total`, in proportion to the weights; what is left goes to the largest remainders. */
function largestRemainder(total: number, parts: readonly Part[]): Shares {
	const of = parts.reduce((sum, { weight }) => sum + weight, 0)
	const quotas = parts.map(({ at, weight, tie }) => {
		const quota = Number(((total * weight) / of).toPrecision(12))
		return { at, tie, floor: Math.floor(quota), rest: quota - Math.floor(quota) }
	})
	const left = total - quotas.reduce((sum, { floor }) => sum + floor, 0)
	const order = quotas.toSorted((a, b) => b.rest - a.rest || (a.tie < b.tie ? -1 : 1))
	const first = new Set(order.slice(0, left).map(({ at }) => at))
	return new Map(quotas.map(({ at, floor }) => [at, floor + (first.has(at) ? 1 : 0)]))
}

/**
 * A whole total split over parts in proportion to their weights (each above zero) by largest remainder, each part at
 * least 1; `total` is at least the number of parts. Keyed by `at`.
 */
export function shareOut(total: number, parts: readonly Part[]): Shares {
	const shares = largestRemainder(total, parts)
	const isShort = ({ at }: Part) => shares.get(at) === 0
	const short = parts.filter(isShort)
	if (short.length === 0) return shares
	const rest = parts.filter((part) => !isShort(part))
	return new Map([...short.map(({ at }) => [at, 1] as const), ...shareOut(total - short.length, rest)])
}
