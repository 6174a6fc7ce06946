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
	readonly isToCome: boolean
}

type Of = { readonly bill: Bill; readonly about: string; readonly invoices: readonly InvoiceNumber[] }

type Stands = Pick<BillView, 'stands' | 'isOpen' | 'isToCome'>

/** Paid, open and until when, or still to come; the day of that stands with the bill. */
function standingOf({ invoices }: Of, account: Account, money: MoneyFormat): Stands {
	const sent = account.invoices.filter(({ number }) => invoices.includes(number))
	if (sent.length === 0) return { stands: 'to come', isOpen: false, isToCome: true }
	const [first, ...more] = sent.filter(({ openCents }) => openCents > 0)
	if (first === undefined) return { stands: 'paid', isOpen: false, isToCome: false }
	const open = sum([first, ...more].map(({ openCents }) => openCents))
	return { stands: `${money(open)} open, due ${fullDay(first.dueOn)}`, isOpen: true, isToCome: false }
}

export function billView(of: Of, account: Account, money: MoneyFormat): BillView {
	return {
		key: of.bill.key,
		about: capital(of.about),
		words: of.invoices.length > 0 ? askedInWords(of.bill, money) : billInWords(of.bill, money),
		invoices: of.invoices,
		...standingOf(of, account, money),
	}
}
