import { and, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { LengthUnit } from '@/lib/format/length'
import type { CreditNote } from '@/lib/money/invoice/credit-note'
import type { Invoice } from '@/lib/money/invoice/invoice'
import { isInvoiceNumber } from '@/lib/money/invoice/number'
import { accountOf, type OpenInvoice } from '@/lib/money/ledger/account'
import type { ClientId } from '@/lib/units/id'
import { read } from '../open'
import { invoice, studio } from '../schema'
import { type Denied, denied, hidden, visibleTo } from '../viewer'
import { invoiceIn, notesTo } from './documents'
import { ledgerOf } from './ledger'

export type InvoicePage = {
	readonly ok: true
	readonly client: ClientId
	readonly invoice: Invoice
	readonly notes: readonly CreditNote[]
	/** Where it stands by the client's account. */
	readonly standing: OpenInvoice
	/** How the studio measures. */
	readonly lengths: LengthUnit
}

/** An invoice by its number; none once the client's words are erased. */
export async function readInvoice(viewer: Viewer, number: string): Promise<InvoicePage | Denied> {
	if (!isInvoiceNumber(number) || viewer.is === 'nobody') return hidden
	return read((db) => {
		const mine = and(eq(invoice.number, number), visibleTo(viewer, invoice.clientId))
		const house = eq(studio.id, 1)
		const [found] = db
			.select({ row: invoice, lengths: studio.lengths })
			.from(invoice)
			.innerJoin(studio, house)
			.where(mine)
			.all()
		if (found === undefined) return hidden
		const { row, lengths } = found
		const no = denied(viewer, 'see the account', row.clientId)
		if (no !== null) return no
		const document = invoiceIn(db, row)
		const standing = accountOf(ledgerOf(db, row.clientId)).invoices.find((each) => each.number === number)
		if (document === undefined || standing === undefined) return hidden
		return { ok: true, client: row.clientId, invoice: document, notes: notesTo(db, number), standing, lengths }
	})
}
