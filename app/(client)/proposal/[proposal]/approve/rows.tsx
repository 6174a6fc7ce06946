export type Row = { readonly label: string; readonly value: string; readonly change?: string | undefined }

/** What will be approved, row by row, each with the way back to where it was chosen. */
export function Rows({ rows }: { readonly rows: readonly Row[] }) {
	return (
		<dl className="mt-6 border-t-2 border-ink">
			{rows.map(({ label, value, change }) => (
				<div key={label} className="flex gap-4 border-b border-line py-3">
					<dt className="w-28 shrink-0 font-semibold sm:w-40">{label}</dt>
					<dd className="grow wrap-anywhere tabular-nums">{value}</dd>
					{change && (
						<dd>
							<a href={change}>
								Change<span className="sr-only"> {label.toLowerCase()}</span>
							</a>
						</dd>
					)}
				</div>
			))}
		</dl>
	)
}
