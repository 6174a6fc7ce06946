import type { Change } from '@/lib/proposal/offer/changes'

type Props = { readonly changes: readonly Change[]; readonly number: number }

/** What changed since the revision before, each field in words and in marks. */
export function Changes({ changes, number }: Props) {
	if (changes.length === 0) return null
	return (
		<section className="mt-10" aria-labelledby="changes">
			<h2 id="changes" className="text-2xl">
				What changed since revision {number - 1}
			</h2>
			<p className="mt-1 text-soft">This is revision {number}.</p>
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
		</section>
	)
}
