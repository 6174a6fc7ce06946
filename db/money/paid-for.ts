import { isOfAgreement } from '@/lib/money/bills/of-agreement'
import { part } from '@/lib/money/charge'
import { netOf } from '@/lib/money/invoice/parts'
import { accountOf } from '@/lib/money/ledger/account'
import { type Cents, sum } from '@/lib/units/cents'
import type { ClientId, Id } from '@/lib/units/id'
import type { Reading } from '../open'
import { invoiceIn, invoiceRows } from './documents'
import { ledgerOf } from './ledger'

/** What a client has paid of an agreement's invoices, without the tax in it. */
export function paidFor(db: Reading, client: ClientId, agreement: Id<'agreement'>): Cents {
	const { invoices } = accountOf(ledgerOf(db, client))
	const paid = new Map(invoices.map(({ number, paidCents }) => [number, paidCents]))
	return sum(
		invoiceRows(db, client)
			.filter(({ bill }) => bill !== null && isOfAgreement(bill, { agreement }))
			.flatMap((row) => {
				const [invoice, amount] = [invoiceIn(db, row), paid.get(row.number)]
				if (invoice === undefined || amount === undefined) return []
				return [part({ netCents: netOf(invoice), tax: invoice.tax }, amount).taken.netCents]
			}),
	)
}
