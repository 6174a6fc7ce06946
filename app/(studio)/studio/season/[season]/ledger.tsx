import type { SeasonPage, SeasonRow } from '@/db/studio/season-page'
import { capital } from '@/lib/format/words'
import { groups } from '@/lib/season/group'
import { rowsAPage } from '@/lib/season/rows-a-page'
import { Row } from './row'

type Props = {
	readonly ledger: SeasonPage
	readonly page: number
	/** What is asked for, as the address says it. */
	readonly ask: string
	readonly again: string | undefined
	readonly reminded: string | undefined
}

const heads = ['Client', 'Where it stands', 'Waiting', 'Answer by', '', 'Palette']

/** The season's ledger: those who wait for them, those who wait for us, the settled; never mixed. */
export function Ledger({ ledger, page, ask, again, reminded }: Props) {
	const of = (group: SeasonRow['group']) => ledger.rows.filter((row) => row.group === group)
	if (ledger.rows.length === 0) return <p className="mt-10 text-lg">There is no such row.</p>
	return (
		<div className="mt-6">
			<table className="ledger season-ledger">
				<caption className="sr-only">Proposals of the season, who owes an answer first</caption>
				<thead>
					<tr className="border-b-2 border-ink text-sm text-soft">
						{heads.map((head, index) => (
							<th key={head || 'more'} scope="col" colSpan={index === 0 ? 2 : 1}>
								{head || <span className="sr-only">More</span>}
							</th>
						))}
						<th scope="col" className="sum">
							Value
						</th>
						<th scope="col" className="sum">
							Margin
						</th>
						<th scope="col">
							<span className="sr-only">What to do</span>
						</th>
					</tr>
				</thead>
				{groups.map((group) =>
					of(group).length === 0 ? null : (
						<tbody key={group}>
							<tr>
								<th colSpan={10} scope="rowgroup" className="pt-7 text-lg font-bold">
									{capital(group)}
								</th>
							</tr>
							{of(group).map((row) => (
								<Row
									key={row.id}
									row={row}
									ledger={ledger}
									page={page}
									ask={ask}
									isAgain={again === row.id}
									isReminded={reminded === row.id}
								/>
							))}
						</tbody>
					),
				)}
			</table>
			<Pages page={page} pages={ledger.pages} ask={ask} />
		</div>
	)
}

type PagesProps = { readonly page: number; readonly pages: number; readonly ask: string }

function Pages({ page, pages, ask }: PagesProps) {
	if (pages < 2) return null
	const to = (number: number) => `?${ask === '' ? '' : `${ask}&`}page=${number}`
	return (
		<nav aria-label="Pages" className="mt-5 flex items-baseline gap-5">
			{page > 1 && <a href={to(page - 1)}>Before</a>}
			<span>
				Page {page} of {pages}, {rowsAPage} to a page
			</span>
			{page < pages && <a href={to(page + 1)}>After</a>}
		</nav>
	)
}
