import type { StudioVisit } from '@/lib/visit/shown'
import { visitWords } from '@/lib/visit/words'

type Props = { readonly client: string; readonly visits: readonly StudioVisit[] }

/** What was done here and what is to come, the latest first. */
export function Visits({ client, visits }: Props) {
	return (
		<section className="mt-10" aria-labelledby="visits">
			<h2 id="visits" className="text-xl">
				Visits
			</h2>
			<ul className="mt-2 border-t border-line">
				{visits.map((visit) => (
					<li key={visit.id} data-season={visit.season.quarter} className="border-b border-line py-2">
						<a href={`/studio/visits/${visit.id}`}>{visitWords(visit)}</a>
						{visit.placeName !== '' && <span className="text-soft"> {visit.placeName}</span>}
						{visit.reported !== '' && <span className="block wrap-anywhere text-soft">“{visit.reported}”</span>}
					</li>
				))}
			</ul>
			<p className="mt-3">
				<a href={`/studio/visits/new/${client}`}>Plan a visit, or write one down</a>
			</p>
		</section>
	)
}
