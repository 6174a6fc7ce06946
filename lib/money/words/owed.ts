import { fullDay } from '../../format/day'
import type { MoneyFormat } from '../../format/money'
import { capital } from '../../format/words'
import type { Day } from '../../units/day'
import type { Bill } from '../bills/bill'
import type { InvoiceNumber } from '../invoice/number'
import type { Account } from '../ledger/account'
import { billInWords } from './bill'

type Asked = { readonly bill: Bill; readonly about: string; readonly invoices: readonly InvoiceNumber[] }

/** What is open, by what is due first, or what comes; null for a client who was never asked for anything and will not be. */
export function owedInWords(account: Account, bills: readonly Asked[], money: MoneyFormat, today: Day): string | null {
	const [open, ...more] = account.invoices
		.filter(({ openCents }) => openCents > 0)
		.toSorted((a, b) => a.dueOn.localeCompare(b.dueOn))
	if (open !== undefined) {
		const { openCents, dueOn, number } = open
		const first = `${money(openCents)} ${dueOn < today ? 'was' : 'is'} due ${fullDay(dueOn)}, invoice ${number}.`
		return more.length === 0 ? first : `${money(account.openCents)} is open. Of it ${first}`
	}
	const next = bills.find(({ invoices }) => invoices.length === 0)
	if (next !== undefined) return `Nothing is due now. Next: ${capital(next.about)}. ${billInWords(next.bill, money)}.`
	return account.invoices.length === 0 ? null : 'Nothing is due. All is paid.'
}
