import { moneyFormat } from '@/lib/format/money'
import type { CreditNote } from '@/lib/money/invoice/credit-note'
import type { Invoice } from '@/lib/money/invoice/invoice'
import { exemptInWords } from '@/lib/money/words/invoice'
import { amountRows, creditFacts, type Fact, invoiceFacts } from '@/lib/money/words/sheet'
import type { Drawing } from '../drawing'
import type { Paper } from '../paper'

/** Frozen data alone: the invoice and the credit notes to it. */
export type InvoicePaper = {
	readonly invoice: Invoice
	readonly notes: readonly CreditNote[]
	readonly paper: Paper
}

type Same = Pick<Invoice, 'from' | 'to' | 'lines' | 'tax' | 'totalCents' | 'currency'>

function sheetView(title: string, of: Same, facts: readonly Fact[], { say }: Drawing) {
	const money = moneyFormat(of.currency)
	return {
		...{ title, from: say(of.from), to: say(of.to.name), address: say(of.to.address) },
		facts: facts.map(({ label, value }) => ({ label, value: say(value) })),
		rows: amountRows(of, money).map(({ key, words, amount }) => ({ key, words: say(words), amount })),
		total: money(of.totalCents),
	}
}

/** One page each, in words and figures that can be drawn: the invoice, then each credit note to it. */
export function invoiceView({ invoice, notes }: InvoicePaper, drawing: Drawing) {
	const exempt = exemptInWords(invoice)
	const first = {
		...sheetView(`Invoice ${invoice.number}`, invoice, invoiceFacts(invoice), drawing),
		exempt: exempt === null ? null : drawing.say(exempt),
		pay: drawing.say(invoice.pay),
	}
	const rest = notes.map((note) => ({
		...sheetView(`Credit note ${note.number}`, note, creditFacts(note), drawing),
		...{ exempt: null, pay: '' },
	}))
	return [first, ...rest]
}
export type SheetView = ReturnType<typeof invoiceView>[number]
