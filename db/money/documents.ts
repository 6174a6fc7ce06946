import { asc, desc, eq, sql } from 'drizzle-orm'
import { type CreditNote, creditNoteSchema } from '@/lib/money/invoice/credit-note'
import { type Invoice, invoiceSchema } from '@/lib/money/invoice/invoice'
import type { CreditNumber, InvoiceNumber } from '@/lib/money/invoice/number'
import type { Hash } from '@/lib/record/hash'
import type { ClientId } from '@/lib/units/id'
import type { Reading } from '../open'
import { unseal } from '../record/seal'
import { creditNote, invoice } from '../schema'

export type InvoiceRow = typeof invoice.$inferSelect

/** In the order in which they were written: a new row never has a smaller row number. */
const written = sql`rowid`

export const invoiceRows = (db: Reading, of: ClientId): InvoiceRow[] =>
	db.select().from(invoice).where(eq(invoice.clientId, of)).orderBy(asc(written)).all()

/** What an invoice says; undefined once the client's words are erased. */
export function invoiceIn(db: Reading, { words }: { readonly words: Hash }): Invoice | undefined {
	const found = unseal(db, words)
	return found === undefined ? undefined : invoiceSchema.parse(found)
}

/** The credit notes to an invoice, the first first; those whose words are erased are left out. */
export const notesTo = (db: Reading, number: InvoiceNumber): CreditNote[] =>
	db
		.select()
		.from(creditNote)
		.where(eq(creditNote.invoice, number))
		.orderBy(asc(written))
		.all()
		.flatMap(({ words }) => {
			const found = unseal(db, words)
			return found === undefined ? [] : [creditNoteSchema.parse(found)]
		})

export const lastInvoice = (db: Reading): InvoiceNumber | null =>
	db.select({ number: invoice.number }).from(invoice).orderBy(desc(written)).limit(1).all()[0]?.number ?? null

export const lastCredit = (db: Reading): CreditNumber | null =>
	db.select({ number: creditNote.number }).from(creditNote).orderBy(desc(written)).limit(1).all()[0]?.number ?? null
