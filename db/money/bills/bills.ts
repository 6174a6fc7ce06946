import { asc, eq } from 'drizzle-orm'
import type { Bill, Issued } from '@/lib/money/bills/bill'
import { billsOfAgreement } from '@/lib/money/bills/of-agreement'
import { billsOfApproval } from '@/lib/money/bills/of-approval'
import { type StillToBill, stillToBill } from '@/lib/money/bills/still-to-bill'
import type { Charge } from '@/lib/money/charge'
import type { Invoice } from '@/lib/money/invoice/invoice'
import type { Telling } from '@/lib/money/invoice/lines'
import type { Heading } from '@/lib/money/invoice/make-invoice'
import { netOf } from '@/lib/money/invoice/parts'
import { accountOf } from '@/lib/money/ledger/account'
import { cents } from '@/lib/units/cents'
import type { Reading } from '../../open'
import { place } from '../../schema'
import { type InvoiceRow, invoiceIn, invoiceRows } from '../documents'
import type { FoundAccount } from '../find'
import { ledgerOf } from '../ledger'
import { agreedWith, type SignedAgreement } from './agreed'
import { type Approved, approvedBy } from './approved'

/** A bill with all that its invoice says but the number. */
export type ToldBill = {
	readonly bill: Bill
	readonly telling: Telling
	readonly heading: Omit<Heading, 'number'>
}

/** Every bill of a client as the record stands, what was asked for, and what is to be done today. */
export type Billing = StillToBill & { readonly bills: readonly ToldBill[]; readonly issued: readonly Issued[] }

type Sent = { readonly row: InvoiceRow; readonly invoice: Invoice }

function sentOf(db: Reading, { client }: FoundAccount): Sent[] {
	return invoiceRows(db, client.id).flatMap((row) => {
		const invoice = invoiceIn(db, row)
		return invoice === undefined ? [] : [{ row, invoice }]
	})
}

const chargeOf = ({ invoice }: Sent): Charge => ({ netCents: netOf(invoice), tax: invoice.tax })

type Head = Pick<Heading, 'from' | 'to' | 'pay'>

function headOf(db: Reading, { client, studio }: FoundAccount): Head {
	const [first] = db
		.select({ address: place.address })
		.from(place)
		.where(eq(place.clientId, client.id))
		.orderBy(asc(place.position))
		.limit(1)
		.all()
	return { from: studio.name, to: { name: client.name, address: first?.address ?? '' }, pay: studio.payWords }
}

/** The deposit of a balance, where it was asked for here. */
function depositFor(bills: readonly Bill[], sent: readonly Sent[]): Telling['deposit'] {
	const deposit = bills.find(({ part }) => part.is === 'deposit')
	const found = sent.find(({ row }) => row.bill !== null && row.bill === deposit?.key)
	return deposit === undefined || found === undefined
		? null
		: { number: found.row.number, netCents: deposit.charge.netCents }
}

function ofApproval({ approval, telling, ...rest }: Approved, head: Head, sent: readonly Sent[]): ToldBill[] {
	const bills = billsOfApproval(approval)
	const { currency, purchaseOrder, exemptCertificate } = rest
	const heading = { ...head, currency, purchaseOrder, exemptCertificate }
	const deposit = depositFor(bills, sent)
	return bills.map((bill) => ({ bill, telling: { ...telling, deposit }, heading }))
}

function ofAgreement({ agreed, document, exemptCertificate }: SignedAgreement, head: Head): ToldBill[] {
	const years = [...new Set([document.from.slice(0, 4), document.to.slice(0, 4)])].join('–')
	const telling = { about: `service agreement ${years}`, rows: [], deposit: null }
	return billsOfAgreement(agreed).map((bill) => {
		const isTaxed = bill.charge.tax.some(({ cents: amount }) => amount > 0)
		const heading = { ...head, currency: document.currency, purchaseOrder: '' }
		return { bill, telling, heading: { ...heading, exemptCertificate: isTaxed ? null : exemptCertificate } }
	})
}

/** @throws when an invoice is not in its client's account */
export function billingOf(db: Reading, found: FoundAccount): Billing {
	const head = headOf(db, found)
	const sent = sentOf(db, found)
	const asked = new Map(sent.flatMap((each) => (each.row.bill === null ? [] : [[each.row.bill, chargeOf(each)]])))
	const bills = [
		...approvedBy(db, found.client.id).flatMap((each) => ofApproval(each, head, sent)),
		...agreedWith(db, found, asked).flatMap((each) => ofAgreement(each, head)),
	]
	const account = accountOf(ledgerOf(db, found.client.id))
	const left = new Map(account.invoices.map(({ number, leftCents }) => [number, leftCents]))
	const issued = sent.flatMap(({ row: { bill, number } }): Issued[] =>
		bill === null ? [] : [{ key: bill, number, leftCents: left.get(number) ?? cents(0) }],
	)
	const todo = stillToBill(
		bills.map(({ bill }) => bill),
		issued,
		found.today,
	)
	return { ...todo, bills, issued }
}
