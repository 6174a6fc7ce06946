import { numberWord } from '@/lib/format/words'
import type { BillView } from '@/lib/money/words/account-bill'

type Props = {
	readonly bills: readonly BillView[]
	/** Path under which an invoice is shown. */
	readonly invoices: string
}

/** More than these that are still to come are folded away. */
const mostToCome = 2

/** Instalments, deposits and balances with what is paid, open and to come; of many to come the first alone. */
export function Bills({ bills, invoices }: Props) {
	const toCome = bills.filter(({ isToCome }) => isToCome)
	const folded = toCome.length > mostToCome ? toCome.slice(1) : []
	return (
		<div className="mt-3 border-t-2 border-ink">
			<List bills={bills.filter((bill) => !folded.includes(bill))} invoices={invoices} />
			{folded.length > 0 && (
				<details>
					<summary className="cursor-pointer py-3 font-semibold">{numberWord(folded.length)} more to come</summary>
					<List bills={folded} invoices={invoices} />
				</details>
			)}
		</div>
	)
}

function List({ bills, invoices }: Props) {
	return (
		<ul>
			{bills.map(({ key, about, words, stands, isOpen, invoices: numbers }) => (
				<li key={key} className="flex flex-wrap justify-between gap-x-8 gap-y-1 border-b border-line py-3">
					<span className="min-w-0 wrap-anywhere tabular-nums">
						<b>{about}.</b> {words}{' '}
						{numbers.map((number) => (
							<a key={number} className="mr-3 inline-flex min-h-6 items-center" href={`${invoices}/${number}`}>
								Invoice {number}
							</a>
						))}
					</span>
					<span className={isOpen ? 'font-semibold' : 'text-soft'}>{stands}</span>
				</li>
			))}
		</ul>
	)
}
