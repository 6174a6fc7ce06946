import { VisitLine } from '@/app/ui/visits/season-chapter'
import type { ClientVisit } from '@/lib/visit/shown'

type Props = { readonly client: string; readonly visits: readonly ClientVisit[] }

const lately = 2

/** What they said is wrong and waits for us, else the last visits; the whole history is a page of its own. */
export function History({ client, visits }: Props) {
	const open = visits.filter(({ state, reported }) => reported !== '' && (state === 'to plan' || state === 'planned'))
	const others = visits.filter((visit) => !open.includes(visit)).toSorted((a, b) => b.on.localeCompare(a.on))
	return (
		<section className="mt-14" aria-labelledby="visits">
			<h2 id="visits" className="text-2xl">
				Visits
			</h2>
			<ul className="mt-3 border-b border-line">
				{[...open, ...others.slice(0, lately)].map((visit) => (
					<VisitLine key={visit.id} visit={visit} />
				))}
			</ul>
			{visits.length === 0 && <p className="mt-2 text-lg">Nothing yet: your first visit will stand here.</p>}
			<p className="mt-5 flex flex-wrap items-center gap-x-6 gap-y-3">
				{visits.length > 0 && (
					<a className="act" href={`/home/${client}/visits`}>
						All visits
					</a>
				)}
				<a className="act" href={`/home/${client}/wrong`}>
					Something is wrong
				</a>
			</p>
		</section>
	)
}
