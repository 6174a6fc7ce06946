import { StateMark } from '@/app/ui/marks/state-mark'
import { Thumbnail } from '@/app/ui/studio/thumbnail'
import { WrongMark } from '@/app/ui/visits/wrong-mark'
import type { SeasonPage, SeasonRow } from '@/db/studio/season-page'
import { moneyFormat } from '@/lib/format/money'
import { capital } from '@/lib/format/words'
import { isOut } from '@/lib/proposal/state'
import { rowView } from '@/lib/season/row-view'
import { Remind } from './remind'

type Props = {
	readonly row: SeasonRow
	readonly ledger: SeasonPage
	readonly page: number
	readonly ask: string
	readonly isAgain: boolean
	readonly isReminded: boolean
}

/** The picture of what stands; what was answered is in its address, for it decides which option is shown. */
function pictureOf({ id, revision, state }: SeasonRow): string | null {
	if (revision === null) return null
	const query = `cut=thumbnail&at=${encodeURIComponent(state)}`
	return `/proposal/${id}/picture/${revision.slice(0, 16)}.svg?${query}`
}

export function Row({ row, ledger, page, ask, isAgain, isReminded }: Props) {
	const view = rowView(row, ledger.today, ledger.timeZone, moneyFormat(ledger.currency))
	const isDead = row.state === 'lapsed' || isOut(row.state)
	return (
		<tr>
			<td className="w-16">
				<Thumbnail wall={row.wall} hexes={row.paletteHexes} picture={pictureOf(row)} />
			</td>
			<td className="client">
				<a href={`/studio/proposal/${row.id}`} className="name text-base">
					{row.name}
				</a>
				<span className="block text-soft">
					{row.kind} · {row.place.toLowerCase()}, {row.containers}
				</span>
			</td>
			<td className="state">
				<span className="flex items-center gap-2">
					<StateMark state={row.state} />
					{capital(row.state)}
				</span>
				{row.wrong && (
					<a href={`/studio/visits/${row.wrong}`} className="flex min-h-6 items-center gap-2 font-semibold text-warn">
						<WrongMark />
						Something is wrong<span className="sr-only"> at {row.name}</span>
					</a>
				)}
			</td>
			<td data-head="Waiting" className="short">
				{view.waiting}
			</td>
			<td data-head="Answer by" className={`short ${view.isSoon ? 'font-bold text-warn' : ''}`}>
				{view.left}
			</td>
			<td className="more text-soft">{view.more}</td>
			<td data-head="Palette" className="short">
				{view.palette}
			</td>
			<td data-head="Value" className={`sum text-base ${isDead ? 'text-soft' : 'font-bold'}`}>
				{view.value}
			</td>
			<td data-head="Margin" className="sum">
				{view.margin}
			</td>
			<td className="sum acts">
				{row.state === 'waiting for an answer' ? (
					<>
						<Remind
							proposal={row.id}
							season={ledger.season.id}
							name={row.name}
							page={page}
							ask={ask}
							isAgain={isAgain}
							isReminded={isReminded}
							remindedOn={view.remindedOn}
						/>
						<a className="does inline-block" href={`/studio/proposal/${row.id}/phone`}>
							By phone<span className="sr-only"> for {row.name}</span>
						</a>
					</>
				) : (
					<Next row={row} season={ledger.season.id} />
				)}
			</td>
		</tr>
	)
}

function Next({ row, season }: { readonly row: SeasonRow; readonly season: string }) {
	const word = row.state === 'change asked for' ? 'Revise' : row.state === 'drafting' ? 'Finish' : null
	if (word === null) return null
	return (
		<>
			<a className="does inline-block" href={`/studio/proposal/${row.id}`}>
				{word}
				<span className="sr-only"> {row.name}</span>
			</a>{' '}
			<a className="does inline-block" href={`/studio/season/${season}/publish?only=${row.id}`}>
				Publish<span className="sr-only"> {row.name}</span>
			</a>
		</>
	)
}
