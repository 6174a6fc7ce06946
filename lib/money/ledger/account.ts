import { type Cents, cents, sum } from '../../units/cents'
import type { Day } from '../../units/day'
import { type InvoiceNumber, inOrder } from '../invoice/number'
import { standing } from './effect'
import type { Ledger, Moving } from './entry'

export type OpenInvoice = {
	readonly number: InvoiceNumber
	readonly on: Day
	readonly dueOn: Day
	readonly cents: Cents
	/** After credit notes and write-offs. */
	readonly leftCents: Cents
	readonly paidCents: Cents
	readonly openCents: Cents
}

/** Where a client stands. What was paid and is not needed by an invoice is kept as their credit. */
export type Account = {
	readonly invoices: readonly OpenInvoice[]
	readonly openCents: Cents
	readonly creditCents: Cents
}

type Is<Kind extends Moving['is']> = Extract<Moving, { is: Kind }>

const ofKind = <Kind extends Moving['is']>(entries: readonly Moving[], is: Kind) =>
	entries.filter((entry): entry is Is<Kind> => entry.is === is)

const total = (entries: readonly { readonly cents: Cents }[]) => sum(entries.map((entry) => entry.cents))

type Named = { readonly invoice: InvoiceNumber | null }
const to = <T extends Named>(entries: readonly T[], { number }: { number: InvoiceNumber }) =>
	entries.filter(({ invoice }) => invoice === number)

/** What is left of each invoice, the oldest first, and what payments that name it bring to it. */
function named(entries: readonly Moving[]) {
	const payments = ofKind(entries, 'payment')
	return ofKind(entries, 'invoice')
		.toSorted((a, b) => a.on.localeCompare(b.on) || inOrder(a.number, b.number))
		.map(({ number, on, dueOn, cents: whole }) => {
			const off = sum([
				total(to(ofKind(entries, 'credit note'), { number })),
				total(to(ofKind(entries, 'write-off'), { number })),
			])
			const leftCents = cents(whole - off)
			const byName = Math.min(leftCents, total(to(payments, { number })))
			return { number, on, dueOn, cents: whole, leftCents, byName }
		})
}

/**
 * Payments go to the invoice that they name as far as it needs them; all else goes to what is open, the oldest invoice
 * first; what then remains, less what was given back, is credit. It follows from the entries, not from their order.
 */
export function accountOf(ledger: Ledger): Account {
	const entries = standing(ledger)
	const found = named(entries)
	const back = total(ofKind(entries, 'refund'))
	let free = total(ofKind(entries, 'payment')) - back - found.reduce((all, { byName }) => all + byName, 0)
	const invoices = found.map(({ byName, ...invoice }) => {
		const more = Math.max(0, Math.min(free, invoice.leftCents - byName))
		free -= more
		return {
			...invoice,
			paidCents: cents(byName + more),
			openCents: cents(invoice.leftCents - byName - more),
		}
	})
	return { invoices, openCents: sum(invoices.map(({ openCents }) => openCents)), creditCents: cents(free) }
}
