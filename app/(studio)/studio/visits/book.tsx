import { Photos } from '@/app/ui/visits/photos'
import { longDay, shortDay } from '@/lib/format/day'
import { capital } from '@/lib/format/words'
import type { Day } from '@/lib/units/day'
import type { StudioVisit } from '@/lib/visit/shown'
import { visitWords } from '@/lib/visit/words'

type Props = { readonly visits: readonly StudioVisit[] }

const at = ({ id }: StudioVisit) => `/studio/visits/${id}`
const where = ({ placeName }: StudioVisit) => (placeName === '' ? 'all places' : placeName)

export function ToPlan({ visits }: Props) {
	if (visits.length === 0) return null
	return (
		<section className="mt-10 max-w-3xl" aria-labelledby="to-plan">
			<h2 id="to-plan" className="text-xl">
				To plan
			</h2>
			<ul className="mt-2 border-t-2 border-ink">
				{visits.map((visit) => (
					<li key={visit.id} className="border-b border-line py-4">
						<div className="flex flex-wrap items-baseline justify-between gap-x-6">
							<p>
								<a href={at(visit)} className="name text-lg">
									{visit.clientName}
								</a>{' '}
								<span className="text-soft">
									{capital(visit.kind)}, {where(visit)}
								</span>
							</p>
							<a href={at(visit)} className="does">
								Plan it<span className="sr-only"> for {visit.clientName}</span>
							</a>
						</div>
						<Said visit={visit} />
						<Photos photos={visit.photos} of={`at ${visit.clientName}`} height={64} />
					</li>
				))}
			</ul>
		</section>
	)
}

/** What the client wrote, and when. */
export function Said({ visit: { reported, reportedBy, reportedOn } }: { readonly visit: StudioVisit }) {
	if (reported === '') return null
	return (
		<div className="said mt-2">
			<p className="text-lg whitespace-pre-line wrap-anywhere">“{reported}”</p>
			<p className="text-soft">
				{reportedBy}
				{reportedOn && `, ${shortDay(reportedOn)}`}
			</p>
		</div>
	)
}

export function Planned({ visits, today }: Props & { readonly today: Day }) {
	const days = [...new Set(visits.flatMap(({ day }) => day ?? []))]
	if (days.length === 0) return null
	return (
		<section className="mt-12 max-w-3xl" aria-labelledby="planned">
			<h2 id="planned" className="text-xl">
				Planned
			</h2>
			{days.map((day) => (
				<div key={day} className="mt-3 border-t border-line pt-2">
					<h3 className={`font-semibold ${day < today ? 'text-warn' : ''}`}>
						{day === today ? 'Today' : longDay(day)}
						{day < today && ', not written down yet'}
					</h3>
					<ul>
						{visits
							.filter((visit) => visit.day === day)
							.map((visit) => (
								<li key={visit.id} className="flex flex-wrap items-baseline justify-between gap-x-6 py-1.5">
									<p>
										<a href={at(visit)} className="name text-base">
											{visit.clientName}
										</a>{' '}
										<span className="text-soft">
											{capital(visit.kind)}, {where(visit)}
										</span>
									</p>
									<a href={at(visit)} className="does">
										Write it down<span className="sr-only">: {visit.clientName}</span>
									</a>
								</li>
							))}
					</ul>
				</div>
			))}
		</section>
	)
}

export function Made({ visits }: Props) {
	if (visits.length === 0) return null
	return (
		<section className="mt-12 max-w-3xl" aria-labelledby="made">
			<h2 id="made" className="text-xl">
				Made lately
			</h2>
			<ul className="mt-2 border-t border-line">
				{visits.map((visit) => (
					<li key={visit.id} className="border-b border-line py-3">
						<a href={at(visit)} className="name text-base">
							{visit.clientName}
						</a>{' '}
						<span className="text-soft">
							{visitWords(visit)}, {where(visit)}
						</span>
						<Photos photos={visit.photos} of={`at ${visit.clientName}`} height={64} />
					</li>
				))}
			</ul>
		</section>
	)
}
