import { moneyFormat } from '@/lib/format/money'
import type { Bill } from '@/lib/money/bills/bill'
import type { InvoiceNumber } from '@/lib/money/invoice/number'
import type { Account } from '@/lib/money/ledger/account'
import { owedInWords } from '@/lib/money/words/owed'
import type { Day } from '@/lib/units/day'

type Props = {
	readonly client: string
	readonly page: {
		readonly currency: string
		readonly account: Account
		readonly today: Day
		readonly bills: readonly {
			readonly bill: Bill
			readonly about: string
			readonly invoices: readonly InvoiceNumber[]
		}[]
	}
}

/** What is open or comes next, with the way to the account. */
export function Owed({ client, page: { account, bills, currency, today } }: Props) {
	const words = owedInWords(account, bills, moneyFormat(currency), today)
	if (words === null) return null
	return (
		<section className="mt-14" aria-labelledby="account">
			<h2 id="account" className="text-2xl">
				Your account
			</h2>
			<p className="mt-2 text-lg tabular-nums">{words}</p>
			<p className="mt-2">
				<a className="inline-flex min-h-11 items-center" href={`/home/${client}/account`}>
					Invoices, payments and statements
				</a>
			</p>
		</section>
	)
}
