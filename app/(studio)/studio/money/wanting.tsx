import { v7 } from 'uuid'
import { fullDay } from '@/lib/format/day'
import type { BillView } from '@/lib/money/words/account-bill'
import type { Day } from '@/lib/units/day'
import { billWhatIsDue } from './actions'

export type Wanting = { readonly id: string; readonly name: string; readonly bills: readonly BillView[] }

type Props = {
	readonly wanting: readonly Wanting[]
	readonly hasPayWords: boolean
	readonly since: Day | null
}

/** What goes out by itself and what does not, so that nobody is surprised. */
function How({ hasPayWords, since }: Omit<Props, 'wanting'>) {
	if (since === null || !hasPayWords)
		return (
			<p className="mt-1">
				Nothing is asked for by itself yet. <a href="/studio/settings#pay">Say how you are paid</a>: from that day on,
				what falls due goes out by itself.
			</p>
		)
	return (
		<p className="mt-1">
			What has fallen due since {fullDay(since)} goes out by itself within the hour. What was owed before goes out by
			hand alone: look first whether you asked for it on paper.
		</p>
	)
}

/** Whose day has come and who was not asked yet. */
export function WantingList({ wanting, ...how }: Props) {
	return (
		<section className="mt-12" aria-labelledby="wanting">
			<h2 id="wanting" className="text-2xl">
				To be asked for
			</h2>
			<How {...how} />
			{wanting.length === 0 && <p className="mt-2 text-soft">Nothing today.</p>}
			<ul className="mt-3 border-t border-line">
				{wanting.map(({ id, name, bills }) => (
					<li
						key={id}
						className="relative flex flex-wrap items-start justify-between gap-x-8 gap-y-1 border-b border-line py-3"
					>
						<div className="min-w-0">
							<a href={`/studio/money/${id}`} className="name wrap-anywhere">
								{name}
							</a>
							{bills.map(({ key, about, words }) => (
								<p key={key} className="text-soft tabular-nums">
									{about}. {words}
								</p>
							))}
						</div>
						<form action={billWhatIsDue}>
							<input type="hidden" name="once" value={v7()} />
							<input type="hidden" name="client" value={id} />
							<button type="submit" className="does">
								Write and send<span className="sr-only"> what {name} owes</span>
							</button>
						</form>
					</li>
				))}
			</ul>
			{wanting.length > 1 && (
				<form action={billWhatIsDue} className="mt-4">
					<input type="hidden" name="once" value={v7()} />
					<input type="hidden" name="client" value="" />
					<button type="submit" className="act">
						Write and send them all
					</button>
				</form>
			)}
		</section>
	)
}
