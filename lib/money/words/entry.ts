import { fullDay } from '../../format/day'
import type { InvoiceNumber } from '../invoice/number'
import { undone } from '../ledger/effect'
import type { Entry, Ledger, Means } from '../ledger/entry'

const by: Record<Means, string> = {
	check: ' by check',
	'bank transfer': ' by bank transfer',
	card: ' by card',
	cash: ' in cash',
	other: '',
}

type Paid = { readonly means: Means; readonly reference: string }

/** " by check, 1042" */
const how = ({ means, reference }: Paid) => `${by[means]}${reference === '' ? '' : `, ${reference}`}`

const forInvoice = (number: InvoiceNumber | null) => (number === null ? '' : `, for invoice ${number}`)

/** "Payment by check, 1042, for invoice 2026-0007": one line of a statement, without its day and amount. */
export function entryInWords(entry: Entry, ledger: Ledger): string {
	switch (entry.is) {
		case 'invoice':
			return `Invoice ${entry.number}, due ${fullDay(entry.dueOn)}`
		case 'credit note':
			return `Credit note ${entry.number} to invoice ${entry.invoice}`
		case 'payment':
			return `Payment${how(entry)}${forInvoice(entry.invoice)}`
		case 'refund':
			return `Refund${how(entry)}`
		case 'write-off':
			return `Written off from invoice ${entry.invoice}: ${entry.reason}`
		case 'counter-entry': {
			const of = undone(ledger, entry)
			return `Undone, ${entry.reason}: “${entryInWords(of, ledger)}” of ${fullDay(of.on)}`
		}
		default:
			return entry satisfies never
	}
}
