import { AgreementMark } from '@/app/ui/studio/agreement-mark'
import { agreementGroup } from '@/lib/agreement/studio/group'
import { agreementRowView } from '@/lib/agreement/studio/row-view'
import type { AgreementList, ListedAgreement } from '@/lib/agreement/studio/shown'
import { moneyFormat } from '@/lib/format/money'
import { capital } from '@/lib/format/words'
import { groups } from '@/lib/season/group'
import type { Moment } from '@/lib/units/day'
import { Remind } from './remind'

type Asked = { readonly again: string | undefined; readonly reminded: string | undefined }
type Props = Asked & { readonly list: AgreementList; readonly now: Moment }

const heads = ['Client', 'Where it stands', 'From – to', 'Waiting', 'Sign by', '']

/** The year's agreements: those who have to sign, those that wait for us, the settled; never mixed. */
export function Ledger({ list, now, again, reminded }: Props) {
	if (list.rows.length === 0) return null
	return (
		<table className="ledger season-ledger plain mt-6">
			<caption className="sr-only">Agreements of {list.year}, who has to sign soonest first</caption>
			<thead>
				<tr className="border-b-2 border-ink text-sm text-soft">
					{heads.map((head) => (
						<th key={head || 'more'} scope="col">
							{head || <span className="sr-only">More</span>}
						</th>
					))}
					<th scope="col" className="sum">
						Fixed in all
					</th>
					<th scope="col">
						<span className="sr-only">What to do</span>
					</th>
				</tr>
			</thead>
			{groups.map((group) => {
				const rows = list.rows.filter(({ state }) => agreementGroup(state) === group)
				return rows.length === 0 ? null : (
					<tbody key={group}>
						<tr>
							<th colSpan={8} scope="rowgroup" className="pt-7 text-lg font-bold">
								{capital(group)}
							</th>
						</tr>
						{rows.map((row) => (
							<Row key={row.id} row={row} list={list} now={now} again={again} reminded={reminded} />
						))}
					</tbody>
				)
			})}
		</table>
	)
}

type RowProps = Props & { readonly row: ListedAgreement }

function Row({ row, list, now, again, reminded }: RowProps) {
	const { id, name, state, totalCents } = row
	const view = agreementRowView(row, now, list.timeZone)
	return (
		<tr>
			<td className="client">
				<a href={`/studio/agreements/${id}`} className="name text-base">
					{name}
				</a>
			</td>
			<td className="state">
				<span className="flex items-center gap-2">
					<AgreementMark state={state} />
					{view.state}
				</span>
			</td>
			<td className="more">{view.term}</td>
			<td data-head="Waiting" className="short">
				{view.waiting}
			</td>
			<td data-head="Sign by" className={`short ${view.isSoon ? 'font-bold text-warn' : ''}`}>
				{view.left}
			</td>
			<td className="more text-soft">{view.more}</td>
			<td data-head="Fixed in all" className={`sum text-base ${state.is === 'ended' ? 'text-soft' : 'font-bold'}`}>
				{totalCents !== null && moneyFormat(list.currency)(totalCents)}
			</td>
			<td className="sum acts">
				{state.is === 'to be signed' && (
					<Remind
						agreement={id}
						name={name}
						year={list.year}
						isAgain={again === id}
						isReminded={reminded === id}
						remindedOn={view.remindedOn}
					/>
				)}
			</td>
		</tr>
	)
}
