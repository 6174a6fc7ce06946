import type { MaterialId } from '../units/id'

type Line = { readonly material: MaterialId; readonly count: number }

/** One material: what the recipe said, what a visit used, and how many more (or fewer) that is. */
export type Use = {
	readonly material: MaterialId
	readonly planned: number
	readonly used: number
	readonly difference: number
}

const toThousandth = (value: number) => Math.round(value * 1000) / 1000

const sumOf = (lines: readonly Line[], material: MaterialId) =>
	toThousandth(lines.filter((line) => line.material === material).reduce((sum, { count }) => sum + count, 0))

/** Planned and used, material by material, in the order of the plan; what was not planned comes last. */
export function compareUse(plan: readonly Line[], used: readonly Line[]): Use[] {
	return [...new Set([...plan, ...used].map(({ material }) => material))].map((material) => {
		const [wanted, taken] = [sumOf(plan, material), sumOf(used, material)]
		return { material, planned: wanted, used: taken, difference: toThousandth(taken - wanted) }
	})
}
