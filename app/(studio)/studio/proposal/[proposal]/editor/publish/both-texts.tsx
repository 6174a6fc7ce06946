'use client'
import type { DraftText } from '@/lib/forms/draft-form'
import { differences } from '@/lib/proposal/desk/differences'
import type { Names } from '@/lib/proposal/desk/places-in'

type Props = {
	readonly mine: DraftText
	readonly theirs: DraftText
	readonly names: Names
	readonly onKeepMine: () => void
	readonly onTakeTheirs: () => void
}

/** Saved in two windows: both texts, field by field, and the choice between them. Nothing is lost by looking. */
export function BothTexts({ mine, theirs, names, onKeepMine, onTakeTheirs }: Props) {
	return (
		<section className="said wrong my-5" role="alert">
			<h2 className="text-lg">It was saved in another window meanwhile</h2>
			<table className="ledger mt-3">
				<thead>
					<tr>
						<th scope="col">Field</th>
						<th scope="col">Here</th>
						<th scope="col">There</th>
					</tr>
				</thead>
				<tbody>
					{differences(mine, theirs, names).map(({ at, mine: here, theirs: there }) => (
						<tr key={at}>
							<th scope="row">{at}</th>
							<td className="whitespace-pre-line wrap-anywhere">{here ?? '—'}</td>
							<td className="whitespace-pre-line wrap-anywhere">{there ?? '—'}</td>
						</tr>
					))}
				</tbody>
			</table>
			<p className="mt-4 flex flex-wrap gap-3">
				<button type="button" className="act first" onClick={onKeepMine}>
					Keep what is here
				</button>
				<button type="button" className="act" onClick={onTakeTheirs}>
					Take what is there
				</button>
			</p>
		</section>
	)
}
