import type { InvoicePaper } from '@/app/documents/pdf/money/invoice-view'
import type { Bill } from '@/lib/money/bills/bill'
import { creditNote } from '@/lib/money/invoice/credit-note'
import type { Invoice } from '@/lib/money/invoice/invoice'
import type { Telling } from '@/lib/money/invoice/lines'
import { type Heading, makeInvoice } from '@/lib/money/invoice/make-invoice'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { heading, telling } from '../../../lib/money/invoice/sample'
import { charge, creditNumber } from '../../../lib/money/sample'

const on = day('2026-11-20')
const bill: Bill = {
	...{ key: 'proposal 1 whole', part: { is: 'whole' }, dated: { on, netDays: 30 } },
	charge: charge(123_450, [6000, 81_000, 4860], [7250, 42_450, 3078]),
}

export type Its = { readonly heading?: Partial<Heading>; readonly telling?: Partial<Telling> }

/** A season of two lines, taxed at two rates: $1,313.88. */
export const invoice = ({ heading: head = {}, telling: told = {} }: Its = {}): Invoice =>
	makeInvoice(
		bill,
		{ ...heading, ...head },
		{
			...telling,
			rows: [
				{ label: 'Left urn', cents: cents(81_000) },
				{ label: 'Design', cents: cents(42_450) },
			],
			...told,
		},
		on,
	)

export const invoicePaper = (of: Invoice = invoice(), more: Partial<InvoicePaper> = {}): InvoicePaper => ({
	...{ invoice: of, notes: [], paper: 'LETTER' },
	...more,
})

/** A hundred dollars less, for two branches. */
export function oneNote(of: Invoice) {
	const asked = {
		number: creditNumber(3),
		on: day('2026-12-01'),
		cents: cents(10_000),
		reason: 'Two branches too few.',
	}
	const made = creditNote(of, [], { ...asked, writtenOffCents: cents(0) })
	if (!made.ok) throw new Error(made.why)
	return made.note
}
