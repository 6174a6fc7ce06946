type Props = {
	readonly notes: readonly { readonly about: string; readonly words: string }[]
	/** Whose word it is that they wrote so. */
	readonly word: 'client' | 'studio'
}

/** What a client wrote with their answer, in their own words. */
export function Notes({ notes, word }: Props) {
	if (notes.length === 0) return null
	return (
		<section className="mt-8" aria-labelledby="notes">
			<h2 id="notes" className="text-2xl">
				{word === 'client' ? 'What you wrote' : 'What was written down by phone'}
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
