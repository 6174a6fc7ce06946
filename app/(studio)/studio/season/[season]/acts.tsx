import type { Total } from '@/db/studio/season-page'
import { quantity } from '@/lib/format/words'
import { groupOf } from '@/lib/season/group'
import { RemindAll } from './remind-all'

type Props = {
	readonly season: string
	readonly totals: readonly Total[]
	readonly toSign: number
	/** Clients who are past a day of payment. */
	readonly late: number
}

/** What can be done for many at once, and what else is waited for. */
export function Acts({ season, totals, toSign, late }: Props) {
	const out = totals.find(({ state }) => state === 'waiting for an answer')
	const drafts = totals.some(({ state }) => groupOf(state) === 'waiting for us')
	return (
		<div className="mt-6">
			<div className="flex flex-wrap items-center gap-x-5 gap-y-2">
				{drafts && (
					<a className="act" href={`/studio/season/${season}/publish`}>
						Publish all that are ready
					</a>
				)}
				<RemindAll season={season} waiting={out?.count ?? 0} lately={out?.lately ?? 0} />
			</div>
			<p className="mt-3 text-sm text-soft">
				Also waited for. Agreements to be signed: {toSign === 0 ? 'none' : <a href="/studio/agreements">{toSign}</a>}.
				Payments past their date: <a href="/studio/money">{late === 0 ? 'none' : quantity(late, 'client')}</a>.
			</p>
		</div>
	)
}
