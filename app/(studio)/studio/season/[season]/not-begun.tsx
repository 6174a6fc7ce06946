import { v7 } from 'uuid'
import type { ClientId, SeasonId } from '@/lib/units/id'
import { begin } from '../../actions'

type Props = {
	readonly season: SeasonId
	readonly clients: {
		readonly count: number
		readonly first: readonly { readonly id: ClientId; readonly name: string }[]
	}
}

/** Clients who have no proposal for the season yet. */
export function NotBegun({ season, clients }: Props) {
	if (clients.count === 0) return null
	return (
		<section className="mt-14" aria-labelledby="not-begun">
			<h2 id="not-begun" className="text-lg">
				No proposal yet: {clients.count}
			</h2>
			<p>
				<a href={`/studio/season/${season}/apply`}>Draft for them from the collection</a>
			</p>
			<ul className="mt-2 max-w-2xl border-t border-line">
				{clients.first.map(({ id, name }) => (
					<li key={id} className="flex items-baseline justify-between gap-4 border-b border-line py-1.5">
						<a href={`/studio/clients/${id}`}>{name}</a>
						<span className="ms-auto">
							<a href={`/studio/season/${season}/start?client=${id}`} className="does inline-block">
								Start from…<span className="sr-only"> for {name}</span>
							</a>
						</span>
						<form action={begin}>
							<input type="hidden" name="once" value={v7()} />
							<input type="hidden" name="client" value={id} />
							<input type="hidden" name="season" value={season} />
							<button type="submit" className="does">
								Begin<span className="sr-only"> a proposal for {name}</span>
							</button>
						</form>
					</li>
				))}
			</ul>
		</section>
	)
}
