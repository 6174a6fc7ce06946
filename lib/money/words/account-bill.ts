import { fullDay } from '../../format/day'
import type { MoneyFormat } from '../../format/money'
import { capital } from '../../format/words'
import { sum } from '../../units/cents'
import type { Bill } from '../bills/bill'
import type { InvoiceNumber } from '../invoice/number'
import type { Account } from '../ledger/account'
import { askedInWords, billInWords } from './bill'

/** A bill as a client reads it: what for, how much and when, and where it stands. */
export type BillView = {
	readonly key: string
	readonly about: string
	readonly words: string
	readonly stands: string
	readonly invoices: readonly InvoiceNumber[]
	readonly isOpen: boolean
}

type Of = { readonly bill: Bill; readonly about: string; readonly invoices: readonly InvoiceNumber[] }

/** Paid, open and until when, or still to come; the day of that stands with the bill. */
function stands({ invoices }: Of, account: Account, money: MoneyFormat): string {
	const sent = account.invoices.filter(({ number }) => invoices.includes(number))
	if (sent.length === 0) return 'to come'
	const [first, ...more] = sent.filter(({ openCents }) => openCents > 0)
	if (first === undefined) return 'paid'
	const open = sum([first, ...more].map(({ openCents }) => openCents))
	return `${money(open)} open, due ${fullDay(first.dueOn)}`
}

export function billView(of: Of, account: Account, money: MoneyFormat): BillView {
	const said = stands(of, account, money)
	return {
		key: of.bill.key,
		about: capital(of.about),
		words: of.invoices.length > 0 ? askedInWords(of.bill, money) : billInWords(of.bill, money),
		stands: said,
		invoices: of.invoices,
		isOpen: said !== 'paid',
	}
}
