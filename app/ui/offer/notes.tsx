type Props = { readonly notes: readonly { readonly about: string; readonly words: string }[] }

/** What a client wrote with their answer, in their own words. */
export function Notes({ notes }: Props) {
	if (notes.length === 0) return null
	return (
		<section className="mt-8" aria-labelledby="notes">
			<h2 id="notes" className="text-2xl">
				What you wrote
			</h2>
			<dl className="mt-2">
				{notes.map(({ about, words }) => (
					<div key={`${about} ${words}`} className="mt-3">
						{about !== 'whole' && <dt className="font-semibold">{about}</dt>}
						<dd className="whitespace-pre-line wrap-anywhere">{words}</dd>
					</div>
				))}
			</dl>
		</section>
	)
}
