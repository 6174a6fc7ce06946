import { v7 } from 'uuid'
import { AgreementMark } from '@/app/ui/studio/agreement-mark'
import type { ClientAgreement } from '@/lib/agreement/studio/shown'
import { fullDay } from '@/lib/format/day'
import { beginAgreement } from '../../agreements/actions'

type Props = { readonly client: string; readonly agreements: readonly ClientAgreement[] }

/** What was agreed for a year or more, and the way to begin one. */
export function Agreements({ client, agreements }: Props) {
	return (
		<section className="mt-10" aria-labelledby="agreements">
			<h2 id="agreements" className="text-xl">
				Agreements
			</h2>
			{agreements.length > 0 && (
				<ul className="mt-2 border-t border-line">
					{agreements.map(({ id, state, from, to }) => (
						<li key={id} className="flex flex-wrap items-baseline gap-x-2 border-b border-line py-2">
							<AgreementMark state={state} />
							<a href={`/studio/agreements/${id}`}>
								{from === null || to === null ? 'Being written' : `${fullDay(from)} – ${fullDay(to)}`}
							</a>
							<span className="text-soft">{state.is}</span>
						</li>
					))}
				</ul>
			)}
			<form action={beginAgreement} className="mt-2">
				<input type="hidden" name="once" value={v7()} />
				<input type="hidden" name="client" value={client} />
				<button type="submit" className="does">
					Begin an agreement
				</button>
			</form>
		</section>
	)
}
