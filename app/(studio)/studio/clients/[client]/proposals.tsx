import { StateMark } from '@/app/ui/marks/state-mark'
import type { ClientPage } from '@/db/clients/read-clients'
import { fullDay } from '@/lib/format/day'
import { capital } from '@/lib/format/words'
import { seasonName } from '@/lib/season/season'
import { dayOf } from '@/lib/units/day'

type Proposal = ClientPage['proposals'][number]
type Props = { readonly proposals: readonly Proposal[]; readonly timeZone: string }

const said = { approval: 'approved', 'change asked for': 'asked for a change', skip: 'skipped' } as const

function Answer({ answer, timeZone }: { readonly answer: Proposal['answers'][number]; readonly timeZone: string }) {
	const { kind, by, word, at, reference } = answer
	return (
		<li>
			{word === 'client' ? `${by} ${said[kind]}` : `${capital(said[kind])} by phone, taken down by ${by}`},{' '}
			{fullDay(dayOf(at, timeZone))}, {reference}
		</li>
	)
}

/** What was proposed, season by season, and every answer to it. */
export function Proposals({ proposals, timeZone }: Props) {
	return (
		<section className="mt-10" aria-labelledby="proposals">
			<h2 id="proposals" className="text-xl">
				Proposals
			</h2>
			{proposals.length === 0 && <p className="mt-2 text-soft">None yet. They begin on the season’s page.</p>}
			<ul className="mt-2 border-t border-line">
				{proposals.map(({ id, state, answers, ...season }) => (
					<li key={id} data-season={season.quarter} className="border-b border-line py-2">
						<p className="flex items-baseline gap-2">
							<StateMark state={state} />
							<a href={`/studio/proposal/${id}`}>{capital(seasonName(season))}</a>
							<span className="text-soft">{state}</span>
						</p>
						{answers.length > 0 && (
							<ul className="mt-1 ps-6 text-soft">
								{answers.map((answer) => (
									<Answer key={answer.reference} answer={answer} timeZone={timeZone} />
								))}
							</ul>
						)}
					</li>
				))}
			</ul>
		</section>
	)
}
