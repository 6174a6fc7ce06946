import type { Metadata } from 'next'
import { idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { studioPage } from '@/app/server/studio/studio-page'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { readSeasonResult } from '@/db/money/season-result'
import { moneyFormat } from '@/lib/format/money'
import { capital } from '@/lib/format/words'
import { barsOf } from '@/lib/money/result/bars'
import { actualInWords, hoursInWords, marginInWords, missingInWords, resultInWords } from '@/lib/money/words/result'
import { seasonName } from '@/lib/season/season'
import { Bars } from './bars'

export const metadata: Metadata = { title: 'Result' }

/** What a season brought, by client and in all. */
export default async function SeasonResult({ params }: PageProps<'/studio/season/[season]/result'>) {
	const { season: text } = await params
	const { who, frame } = await studioPage(`/studio/season/${text}/result`, 'see the costing')
	const page = await readSeasonResult(who, idIn<'season'>(text))
	if (page === undefined) hide(who)
	const { season, names } = page
	const { clients, all } = page.result
	const money = moneyFormat(page.currency)
	const actual = actualInWords(all, money)
	const bars = barsOf(clients)
	return (
		<StudioFrame {...frame} here="Season" season={season.quarter}>
			<p className="text-soft">
				<a href={`/studio/season/${text}`}>{capital(seasonName(season))}</a>
			</p>
			<h1 className="text-4xl font-extrabold tracking-tight">What the season brought</h1>
			{all.jobs === 0 && <p className="mt-4 text-lg">Nothing was approved yet.</p>}
			{all.jobs > 0 && (
				<>
					<p className="mt-4 text-lg">
						{resultInWords(all, money)}, before overhead. {hoursInWords(all.estimatedMinutes)} of work were estimated.
					</p>
					{actual && <p className="mt-1">{actual}</p>}
					{missingInWords(all).map((says) => (
						<p key={says} className="mt-1 text-soft">
							{says}
						</p>
					))}
					<div className="mt-8 relative overflow-x-auto">
						<table className="ledger">
							<thead>
								<tr className="text-sm text-soft">
									<th scope="col">Client</th>
									<th scope="col" className="sum">
										Value
									</th>
									<th scope="col" className="sum">
										Estimated cost
									</th>
									<th scope="col" className="sum">
										Hours
									</th>
									<th scope="col" className="sum">
										Margin
									</th>
									<th scope="col" className="w-2/5 min-w-48">
										Value, and outlined its cost
									</th>
								</tr>
							</thead>
							<tbody>
								{clients.map((each, index) => (
									<tr key={each.client}>
										<td className="wrap-anywhere">
											<a className="inline-block py-1 pointer-coarse:py-2.5" href={`/studio/money/${each.client}`}>
												{names.get(each.client)}
											</a>
										</td>
										<td className="sum">{money(each.valueCents)}</td>
										<td className="sum">{money(each.estimatedCostCents)}</td>
										<td className="sum">{hoursInWords(each.estimatedMinutes)}</td>
										<td className="sum">{marginInWords(each.estimatedMarginPercent).replace('margin ', '')}</td>
										<td>{bars[index] && <Bars bar={bars[index]} />}</td>
									</tr>
								))}
							</tbody>
						</table>
					</div>
				</>
			)}
		</StudioFrame>
	)
}
