import type { ReactNode } from 'react'
import type { StatementView } from '@/lib/money/words/statement'

type Props = {
	readonly view: StatementView
	readonly year: number
	readonly years: readonly number[]
	/** Path of the page of the account. */
	readonly path: string
	/** What can be done to a line, by its key. */
	readonly acts?: (key: string) => ReactNode
}

/** A client's account over one year, line by line, with the way to the other years and to the file. */
export function Statement({ view, year, years, path, acts }: Props) {
	return (
		<section className="mt-12" aria-labelledby="statement">
			<h2 id="statement" className="text-2xl">
				Statement of {year}
			</h2>
			<p className="no-print mt-2 flex flex-wrap gap-x-4 *:inline-flex *:min-h-11 *:items-center">
				{years
					.filter((each) => each !== year)
					.map((each) => (
						<a key={each} href={`${path}?year=${each}`}>
							{each}
						</a>
					))}
				<a href={`${path}/pdf?year=${year}`}>Take it as a PDF</a>
				<a href={`${path}/csv?year=${year}`}>Take it as a table (CSV)</a>
			</p>
			<p className="mt-3">{view.opening}</p>
			<div className="mt-2 relative overflow-x-auto">
				<table className="ledger max-sm:text-sm">
					<thead>
						<tr className="text-sm text-soft">
							<th scope="col" className="max-sm:hidden">
								Day
							</th>
							<th scope="col">What</th>
							<th scope="col" className="sum">
								Charged
							</th>
							<th scope="col" className="sum max-sm:whitespace-normal">
								Paid or credited
							</th>
							<th scope="col" className="sum">
								Balance
							</th>
						</tr>
					</thead>
					<tbody>
						{view.lines.map(({ key, day, words, charged, paid, balance }) => (
							<tr key={key}>
								<td className="whitespace-nowrap max-sm:hidden">{day}</td>
								<td className="wrap-anywhere">
									<span className="block text-soft sm:hidden">{day}</span>
									{words}
									{acts?.(key)}
								</td>
								<td className="sum">{charged}</td>
								<td className="sum">{paid}</td>
								<td className="sum">{balance}</td>
							</tr>
						))}
					</tbody>
				</table>
			</div>
			{view.lines.length === 0 && <p className="mt-2 text-soft">Nothing was written in {year}.</p>}
			<p className="mt-3 font-semibold">{view.closing}</p>
		</section>
	)
}
