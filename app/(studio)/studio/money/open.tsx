import type { MoneyFormat } from '@/lib/format/money'
import type { Account } from '@/lib/money/ledger/account'
import type { BillView } from '@/lib/money/words/account-bill'

type Client = {
	readonly id: string
	readonly name: string
	readonly account: Account
	/** The first that is still to come. */
	readonly next: BillView | undefined
}

const nextInWords = ({ about, words }: BillView) => `${about}. ${words}`

/** Every client with something open, kept or to come. */
export function Open({ clients, money }: { readonly clients: readonly Client[]; readonly money: MoneyFormat }) {
	return (
		<section className="mt-12" aria-labelledby="open">
			<h2 id="open" className="text-2xl">
				Every account
			</h2>
			<div className="mt-3 relative overflow-x-auto">
				<table className="ledger">
					<thead>
						<tr className="text-sm text-soft">
							<th scope="col">Client</th>
							<th scope="col" className="max-sm:hidden">
								Next
							</th>
							<th scope="col" className="sum">
								Open
							</th>
						</tr>
					</thead>
					<tbody>
						{clients.map(({ id, name, account: { openCents, creditCents }, next }) => (
							<tr key={id}>
								<td className="wrap-break-word">
									<a href={`/studio/money/${id}`} className="name">
										{name}
									</a>
									{next && <span className="block text-soft sm:hidden">{nextInWords(next)}</span>}
								</td>
								<td className="text-soft max-sm:hidden">{next && nextInWords(next)}</td>
								<td className="sum">
									{openCents > 0 && money(openCents)}
									{creditCents > 0 && `${money(creditCents)} kept`}
								</td>
							</tr>
						))}
					</tbody>
				</table>
			</div>
		</section>
	)
}
