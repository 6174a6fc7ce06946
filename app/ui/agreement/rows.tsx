import type { SummaryRow } from '@/lib/agreement/document/summary'

/** Labels with what they say, line by line. */
export function Rows({ rows }: { readonly rows: readonly SummaryRow[] }) {
	return (
		<dl className="mt-3 border-t-2 border-ink">
			{rows.map(({ label, value }) => (
				<div key={`${label} ${value}`} className="gap-4 border-b border-line py-3 sm:flex">
					<dt className="shrink-0 font-semibold sm:w-56">{label}</dt>
					<dd className="grow wrap-anywhere tabular-nums">{value}</dd>
				</div>
			))}
		</dl>
	)
}
