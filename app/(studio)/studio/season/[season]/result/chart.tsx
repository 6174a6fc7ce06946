import { barsOf } from '@/lib/money/result/bars'
import type { Result } from '@/lib/money/result/season-result'

const [width, step, thick] = [1000, 46, 15] as const

type Props = { readonly results: readonly (Result & { readonly client: string })[]; readonly says: string }

/** Value and estimated cost of each client, one under the other by one measure; what it cost in fact where that is known. */
export function Chart({ results, says }: Props) {
	const bars = barsOf(results)
	const height = Math.max(step, bars.length * step)
	return (
		<svg className="result-chart mt-3 w-full" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={says}>
			{bars.map(({ value, estimated, actual }, index) => (
				<g key={results[index]?.client} transform={`translate(0 ${index * step})`}>
					<rect className="value" y={4} width={value} height={thick} />
					<rect className="estimated" y={6 + thick} width={estimated} height={thick} />
					{actual !== null && <rect className="actual" y={6 + thick + thick / 3} width={actual} height={thick / 3} />}
				</g>
			))}
		</svg>
	)
}
