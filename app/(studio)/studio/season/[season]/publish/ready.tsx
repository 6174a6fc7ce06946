import type { ReadyView } from '@/lib/season/draft-view'

type Props = { readonly drafts: readonly ReadyView[]; readonly only: string | undefined }

/** The drafts that are ready, each with what it would send out; ticked, or one alone where that was asked for. */
export function Ready({ drafts, only }: Props) {
	const isKnown = drafts.some(({ id }) => id === only)
	return (
		<table className="ledger season-ledger drafts mt-4">
			<caption className="pb-3 text-start text-soft">
				Each that is ticked is frozen as a revision, and goes by mail to those named beside it.
			</caption>
			<thead>
				<tr className="border-b-2 border-ink text-sm text-soft">
					<th scope="col">
						<span className="sr-only">Publish</span>
					</th>
					<th scope="col">Client</th>
					<th scope="col">Mailed to</th>
					<th scope="col">Answer by</th>
					<th scope="col" className="sum">
						Before
					</th>
					<th scope="col" className="sum">
						Total
					</th>
					<th scope="col" className="sum">
						Margin
					</th>
				</tr>
			</thead>
			<tbody>
				{drafts.map(({ id, name, pick, total, before, margin, isUnderFloor, answerBy, mailed }) => (
					<tr key={id}>
						<td className="w-12">
							<input
								type="checkbox"
								className="tick"
								name="pick"
								value={pick}
								data-name={name}
								aria-label={`Publish ${name}`}
								defaultChecked={!isKnown || id === only}
							/>
						</td>
						<td className="client">
							<a href={`/studio/proposal/${id}`} className="name text-base">
								{name}
							</a>
						</td>
						<td data-head="Mailed to" className="mailed">
							{mailed}
						</td>
						<td data-head="Answer by" className="short">
							{answerBy}
						</td>
						<td data-head="Before" className="sum">
							{before}
						</td>
						<td data-head="Total" className="sum text-base font-bold">
							{total}
						</td>
						<td data-head="Margin" className={`sum ${isUnderFloor ? 'font-bold text-warn' : ''}`}>
							{margin}
							{isUnderFloor && ', under your floor'}
						</td>
					</tr>
				))}
			</tbody>
		</table>
	)
}
