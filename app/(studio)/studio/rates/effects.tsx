import { moneyFormat } from '@/lib/format/money'
import { percent } from '@/lib/format/words'
import type { RateEffect } from '@/lib/season/rate-effect'
import { seasonName } from '@/lib/season/season'

type Props = {
	readonly effects: readonly RateEffect[]
	readonly currency: string
	/** The least margin, in per cent. */
	readonly floor: number
}

const margin = (tenths: number | null) => (tenths === null ? '–' : percent(tenths / 10))

/** What the numbers that were typed would do to each open draft, and the button that makes them stand. */
export function Effects({ effects, currency, floor }: Props) {
	const money = moneyFormat(currency)
	const priced = effects.filter(({ was, becomes }) => was !== null || becomes !== null)
	const others = effects.length - priced.length
	return (
		<section className="mt-6 border-y-2 border-ink py-5" aria-labelledby="effects">
			<h2 id="effects" className="text-2xl font-bold">
				What this does to the open drafts
			</h2>
			<p className="mt-1 text-soft">
				{priced.length === 0
					? 'No open draft is priced yet.'
					: 'Before tax; with several palettes the one of least price.'}
				{others > 0 && priced.length > 0 && ` ${others} more are not priced yet.`} Nothing is saved yet.
			</p>
			{priced.length > 0 && (
				<div className="mt-3 overflow-x-auto">
					<table className="w-full max-w-4xl tabular-nums">
						<thead>
							<tr className="text-start">
								<th scope="col" className="py-1 pe-4 text-start">
									Client
								</th>
								<th scope="col" className="py-1 pe-4 text-end">
									Now
								</th>
								<th scope="col" className="py-1 pe-4 text-end">
									Then
								</th>
								<th scope="col" className="py-1 pe-4 text-end">
									Margin now
								</th>
								<th scope="col" className="py-1 text-end">
									Margin then
								</th>
							</tr>
						</thead>
						<tbody>
							{priced.map(({ proposal, client, season, was, becomes }) => (
								<tr key={proposal} className="border-t border-line align-baseline">
									<th scope="row" className="py-1.5 pe-4 text-start font-normal">
										<a href={`/studio/proposal/${proposal}`}>{client}</a>{' '}
										<span className="text-sm text-soft">{seasonName(season)}</span>
									</th>
									<td className="py-1.5 pe-4 text-end">{was === null ? '–' : money(was.valueCents)}</td>
									<td className="py-1.5 pe-4 text-end font-semibold">
										{becomes === null ? '–' : money(becomes.valueCents)}
									</td>
									<td className="py-1.5 pe-4 text-end">{margin(was?.marginTenths ?? null)}</td>
									<td className="py-1.5 text-end">
										{margin(becomes?.marginTenths ?? null)}
										{(becomes?.marginTenths ?? 1000) < floor * 10 && (
											<span className="block text-sm font-semibold text-warn">below {floor} %</span>
										)}
									</td>
								</tr>
							))}
						</tbody>
					</table>
				</div>
			)}
			<button type="submit" name="step" value="save" className="act first mt-5">
				Save these rates
			</button>
		</section>
	)
}
