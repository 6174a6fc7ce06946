import { SeasonMark } from '@/app/ui/marks/season-mark'
import { daySpan } from '@/lib/format/day'
import { capital } from '@/lib/format/words'
import { seasonName } from '@/lib/season/season'
import type { Day } from '@/lib/units/day'
import type { Chapter, InSeason } from '@/lib/visit/timeline'
import type { VisitKind, VisitState } from '@/lib/visit/visit'
import { visitWords } from '@/lib/visit/words'
import { Photos } from './photos'

type Visit = {
	readonly id: string
	readonly season: InSeason
	readonly place: string | null
	readonly kind: VisitKind
	readonly state: VisitState
	readonly day: Day | null
	readonly came: string
	readonly note: string
	readonly reported: string
	readonly reportedOn: Day | null
	readonly photos: Parameters<typeof Photos>[0]['photos']
}
type Design = {
	readonly season: InSeason
	readonly proposal: string
	readonly revision: string
	readonly name: string
	readonly isIn: boolean
}

/** The picture of what was approved: which option that is stands in the address beside the revision. */
export const designPicture = ({ proposal, revision, isIn }: Omit<Design, 'season' | 'name'>): string =>
	`/proposal/${proposal}/picture/${revision.slice(0, 16)}.svg?cut=thumbnail&at=${isIn ? 'installed' : 'approved'}`

function DesignPicture({ design }: { readonly design: Design }) {
	const { proposal, name, isIn } = design
	return (
		<p className="mt-4 flex flex-wrap items-end gap-x-5 gap-y-2">
			<a href={`/proposal/${proposal}`} className="block">
				<img
					src={designPicture(design)}
					alt={`The design “${name}” before your wall, a drawing`}
					width="260"
					height="205"
					loading="lazy"
					className="photo"
				/>
			</a>
			<span>
				<span className="block text-soft">{isIn ? 'What went in' : 'What goes in'}</span>
				<a href={`/proposal/${proposal}`} className="flex min-h-11 items-center text-lg font-semibold">
					{name}
				</a>
			</span>
		</p>
	)
}

/** What became of something that was said to be wrong, as its client reads it. */
function outcome({ state }: Visit): string {
	return state === 'to plan' ? 'We have it; we plan a visit.' : state === 'dropped' ? 'Settled without a visit.' : ''
}

export function VisitLine({ visit }: { readonly visit: Visit }) {
	const { state, reported, reportedOn, note, photos } = visit
	const words = visitWords(visit)
	const isWords = state === 'planned' || state === 'done'
	return (
		<li className="border-t border-line py-4">
			{reported !== '' && (
				<>
					<p className="text-soft">You said{reportedOn && ` on ${daySpan(reportedOn, reportedOn)}`}:</p>
					<p className="text-lg whitespace-pre-line wrap-anywhere">“{reported}”</p>
				</>
			)}
			<p className="text-lg font-semibold">{isWords ? words : outcome(visit)}</p>
			{note !== '' && <p className="mt-1 max-w-2xl whitespace-pre-line wrap-anywhere">{note}</p>}
			<Photos photos={photos} of={isWords ? words.toLowerCase() : 'as you sent it'} />
		</li>
	)
}

type Props = { readonly chapter: Chapter<Visit, Design> }

/** A season of a client's history: the design that went in, then what was done at each place. */
export function SeasonChapter({ chapter: { season, design, places } }: Props) {
	const name = capital(seasonName(season))
	return (
		<section data-season={season.quarter} className="mt-12" aria-label={name}>
			<h2 className="flex items-center gap-3 text-3xl">
				<SeasonMark quarter={season.quarter} size={30} />
				{name}
			</h2>
			{design && <DesignPicture design={design} />}
			{places.map(({ place, visits }) => (
				<div key={place} className="mt-6">
					<h3 className="text-xl">{place ?? 'All places'}</h3>
					<ul className="mt-2">
						{visits.map((visit) => (
							<VisitLine key={visit.id} visit={visit} />
						))}
					</ul>
				</div>
			))}
			{places.length === 0 && <p className="mt-3 text-soft">No visit is written down for this season.</p>}
		</section>
	)
}
