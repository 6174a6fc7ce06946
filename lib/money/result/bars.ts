import { halfUp } from '../../units/round'
import type { Result } from './season-result'

/** Lengths in thousandths of the longest bar of the chart; `actual` is null while a cost is not known. */
export type Bar = { readonly value: number; readonly estimated: number; readonly actual: number | null }

/** Value and cost of each result side by side, all by one measure; none where there is nothing to show. */
export function barsOf(results: readonly Result[]): Bar[] {
	const actualOf = ({ actual }: Result) => (actual.missing > 0 ? null : actual.costCents)
	const longest = Math.max(
		0,
		...results.flatMap((each) => [each.valueCents, each.estimatedCostCents, actualOf(each) ?? 0]),
	)
	const length = (amount: number) => (longest === 0 ? 0 : halfUp((amount * 1000) / longest))
	return results.map((each) => {
		const actual = actualOf(each)
		return {
			value: length(each.valueCents),
			estimated: length(each.estimatedCostCents),
			actual: actual === null ? null : length(actual),
		}
	})
}
