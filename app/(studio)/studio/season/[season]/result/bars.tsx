import type { Bar } from '@/lib/money/result/bars'

const [width, height, thick] = [1000, 60, 24] as const

/** Value above, estimated cost below, what it cost in fact within that; the figures stand beside it, so it says nothing of its own. */
export function Bars({ bar: { value, estimated, actual } }: { readonly bar: Bar }) {
	return (
		<svg
			className="result-chart h-7 w-full"
			viewBox={`0 0 ${width} ${height}`}
			preserveAspectRatio="none"
			aria-hidden="true"
		>
			<rect className="value" y={2} width={value} height={thick} />
			<rect className="estimated" y={thick + 6} width={estimated} height={thick} />
			{actual !== null && <rect className="actual" y={thick + 14} width={actual} height={8} />}
		</svg>
	)
}
