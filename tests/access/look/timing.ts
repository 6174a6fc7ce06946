/** The middle value; the mean of the two in the middle when their number is even. */
export function median(values: readonly number[]): number {
	const inOrder = values.toSorted((a, b) => a - b)
	const half = inOrder.length / 2
	const [low, high] = [inOrder[Math.ceil(half) - 1], inOrder[Math.floor(half)]]
	if (low === undefined || high === undefined) throw new Error('median: there are no values')
	return (low + high) / 2
}

/**
 * How well two samples can be told apart: the chance that one of `a` is above one of `b`, ties by half. Half is not at
 * all, 0 or 1 always (Mann and Whitney 1947: U ÷ nm).
 */
export function apart(a: readonly number[], b: readonly number[]): number {
	const above = a.reduce((sum, x) => sum + b.reduce((wins, y) => wins + (x > y ? 1 : x === y ? 0.5 : 0), 0), 0)
	return above / (a.length * b.length)
}
