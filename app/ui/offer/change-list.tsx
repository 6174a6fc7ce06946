import type { Change } from '@/lib/proposal/offer/changes'

/** Each field that is different, in words and in marks. */
export function ChangeList({ changes }: { readonly changes: readonly Change[] }) {
	return (
		<dl className="mt-3 lined">
			{changes.map(({ of, was, is }) => (
				<div key={of} className="grid gap-x-6 border-b border-line py-3 sm:grid-cols-[14rem_1fr]">
					<dt className="font-semibold">{of}</dt>
					<dd>
						{was !== null && (
							<del className="block whitespace-pre-line text-was">
								<span className="sr-only">Was: </span>
								{was}
							</del>
						)}
						{is !== null && (
							<ins className="block font-semibold whitespace-pre-line no-underline">
								<span className="marked">{was === null ? 'New: ' : 'Now: '}</span>
								{is}
							</ins>
						)}
						{is === null && <span className="text-soft">No longer part of it</span>}
					</dd>
				</div>
			))}
		</dl>
	)
}
