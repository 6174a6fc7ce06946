import { fullDay } from '../../format/day'
import type { MoneyFormat } from '../../format/money'
import { capital } from '../../format/words'
import type { CreditNote } from '../invoice/credit-note'
import type { Invoice } from '../invoice/invoice'
import { taxInWords, termsInWords } from './invoice'

export type Fact = { readonly label: string; readonly value: string }

/** What stands above the lines of an invoice. */
export const invoiceFacts = ({ number, on, about, purchaseOrder, ...rest }: Invoice): Fact[] => [
	{ label: 'Invoice', value: number },
	{ label: 'Date', value: fullDay(on) },
	{ label: 'For', value: capital(about) },
	...(purchaseOrder === '' ? [] : [{ label: 'Purchase order', value: purchaseOrder }]),
	{ label: 'To be paid', value: termsInWords(rest) },
]

/** The same of a credit note. */
export const creditFacts = ({ number, on, invoice, reason }: CreditNote): Fact[] => [
	{ label: 'Credit note', value: number },
	{ label: 'Date', value: fullDay(on) },
	{ label: 'To invoice', value: invoice },
	{ label: 'Reason', value: reason },
]

/** Frozen lines may read alike: `key` tells them apart by their places. */
export type AmountRow = { readonly key: string; readonly words: string; readonly amount: string }

/** Lines and below them the tax; with the total below them, a column that adds up. */
export function amountRows({ lines, tax }: Pick<Invoice, 'lines' | 'tax'>, money: MoneyFormat): AmountRow[] {
	return [
		...lines.map(({ words, cents }, place) => ({ key: `${place} ${words}`, words, amount: money(cents) })),
		...tax.map((each) => ({
			key: `tax ${each.milliPercent}`,
			words: taxInWords(each, money),
			amount: money(each.cents),
		})),
	]
}
