import type { NotReadyView } from '@/lib/season/draft-view'

/** The drafts that are not ready, each with why and the way to its desk. */
export function NotReady({ drafts }: { readonly drafts: readonly NotReadyView[] }) {
	if (drafts.length === 0) return null
	return (
		<section className="mt-14 max-w-3xl" aria-labelledby="not-ready">
			<h2 id="not-ready" className="text-lg">
				Not ready: {drafts.length}
			</h2>
			<ul className="mt-2 border-t border-line">
				{drafts.map(({ id, name, problems }) => (
					<li key={id} className="border-b border-line py-2">
						<a href={`/studio/proposal/${id}`} className="name">
							{name}
						</a>
						<ul className="text-soft">
							{problems.map((says) => (
								<li key={says}>{says}</li>
							))}
						</ul>
					</li>
				))}
			</ul>
		</section>
	)
}
