import type { Day } from '../../units/day'
import type { Bill } from '../bills/bill'
import { chargeCents, taxed } from '../charge'
import { dueDay, type Invoice, invoiceSchema } from './invoice'
import { linesOf, type Telling } from './lines'
import type { InvoiceNumber } from './number'

/** What stands on an invoice beside what its bill says. */
export type Heading = Pick<
	Invoice,
	'number' | 'currency' | 'from' | 'to' | 'purchaseOrder' | 'exemptCertificate' | 'pay'
>

/**
 * The invoice of a bill, written on `on`.
 * @throws when the bill has no day yet, or the lines are not those of the bill
 */
export function makeInvoice(bill: Bill, heading: Heading, telling: Telling, on: Day): Invoice {
	if (bill.dated === null || bill.dated.on > on) throw new Error(`makeInvoice: ${bill.key} is not to be asked for yet`)
	const terms = { from: bill.dated.on, netDays: bill.dated.netDays }
	return invoiceSchema.parse({
		...heading,
		...{ v: 1, is: 'invoice', on, terms, dueOn: dueDay(on, terms), about: telling.about, bill: bill.key },
		lines: linesOf(bill, telling),
		tax: taxed(bill.charge),
		totalCents: chargeCents(bill.charge),
	})
}

/** An invoice that takes the place of one that was credited whole; its terms are counted as they were. */
export function correctedInvoice(
	{ terms, ...wrong }: Invoice,
	right: Partial<Omit<Invoice, 'number' | 'on' | 'dueOn' | 'terms'>>,
	{ number, on }: { readonly number: InvoiceNumber; readonly on: Day },
): Invoice {
	return invoiceSchema.parse({ ...wrong, ...right, terms, number, on, dueOn: dueDay(on, terms) })
}
