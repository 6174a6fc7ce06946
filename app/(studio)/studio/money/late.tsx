import { v7 } from 'uuid'
import { days, fullDay } from '@/lib/format/day'
import type { MoneyFormat } from '@/lib/format/money'
import { bands } from '@/lib/money/late/band'
import type { LateClient, LateList } from '@/lib/money/late/late-list'
import { lateListInWords } from '@/lib/money/words/late'
import type { Day } from '@/lib/units/day'
import { remindWhoIsLate } from './actions'

type Props = {
	readonly late: LateList
	readonly names: ReadonlyMap<string, string>
	readonly reminded: ReadonlyMap<string, Day | null>
	readonly money: MoneyFormat
}

const lateBands = bands.slice(1)

function Remind({ client, label }: { readonly client: string; readonly label: string }) {
	return (
		<form action={remindWhoIsLate}>
			<input type="hidden" name="once" value={v7()} />
			<input type="hidden" name="client" value={client} />
			<button type="submit" className={client === '' ? 'act' : 'does'}>
				{label}
			</button>
		</form>
	)
}

function Row({ of, name, last, money }: { of: LateClient; name: string; last: Day | null; money: MoneyFormat }) {
	const [first] = of.invoices
	return (
		<tr>
			<td className="wrap-anywhere">
				<a href={`/studio/money/${of.client}`} className="name">
					{name}
				</a>
				<p className="text-sm text-soft">
					{first && `${days(first.daysLate)} past due`}
					{last && `, reminded ${fullDay(last)}`}
				</p>
			</td>
			{lateBands.map((band) => (
				<td key={band} className="sum max-sm:hidden">
					{of.byBand[band] === 0 ? '' : money(of.byBand[band])}
				</td>
			))}
			<td className="sum font-bold">{money(of.lateCents)}</td>
			<td>
				<Remind client={of.client} label="Remind" />
			</td>
		</tr>
	)
}

/** Who is past their day, by how long. */
export function Late({ late, names, reminded, money }: Props) {
	return (
		<section className="mt-8" aria-labelledby="late">
			<h2 id="late" className="text-2xl">
				Past their day
			</h2>
			<p className="mt-1 text-lg">{lateListInWords(late, money)}</p>
			{late.clients.length > 0 && (
				<>
					<div className="relative mt-3 overflow-x-auto">
						<table className="ledger">
							<thead>
								<tr className="text-sm text-soft">
									<th scope="col">Client</th>
									{lateBands.map((band) => (
										<th key={band} scope="col" className="sum max-sm:hidden">
											{band}
										</th>
									))}
									<th scope="col" className="sum">
										In all
									</th>
									<th scope="col">
										<span className="sr-only">What to do</span>
									</th>
								</tr>
							</thead>
							<tbody>
								{late.clients.map((of) => (
									<Row
										key={of.client}
										of={of}
										name={names.get(of.client) ?? ''}
										last={reminded.get(of.client) ?? null}
										money={money}
									/>
								))}
							</tbody>
						</table>
					</div>
					<div className="mt-4">
						<Remind client="" label="Remind all who are late" />
					</div>
				</>
			)}
		</section>
	)
}
