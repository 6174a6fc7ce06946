import type { Viewer } from '@/lib/access/viewer'
import { type Credited, creditNote as makeNote } from '@/lib/money/invoice/credit-note'
import { makeInvoice } from '@/lib/money/invoice/make-invoice'
import { type InvoiceNumber, nextCredit, nextInvoice } from '@/lib/money/invoice/number'
import { standing } from '@/lib/money/ledger/effect'
import { type Cents, sum } from '@/lib/units/cents'
import type { Tx } from '../../open'
import { enqueue } from '../../outbox/enqueue'
import { contactsOf } from '../../proposals/recipients'
import { append } from '../../record/append'
import { seal } from '../../record/seal'
import { creditNote, entry, invoice, invoiceAsked } from '../../schema'
import type { Stamp } from '../../stamp'
import { invoiceIn, invoiceRows, lastCredit, lastInvoice, notesTo } from '../documents'
import type { FoundAccount } from '../find'
import { ledgerOf } from '../ledger'
import type { ToldBill } from './bills'

const byOf = (viewer: Viewer) => (viewer.is === 'staff' ? viewer.person : null)

/** The next invoice, sealed, with its entry, its line of the record and its mails. */
export function writeInvoice(
	tx: Tx,
	stamp: Stamp,
	viewer: Viewer,
	{ client, today }: FoundAccount,
	{ bill, telling, heading }: ToldBill,
): InvoiceNumber {
	const number = nextInvoice(lastInvoice(tx), today)
	const made = makeInvoice(bill, { ...heading, number }, telling, today)
	const words = seal(tx, stamp, client.id, made)
	const [id, by] = [stamp.id<'entry'>(), byOf(viewer)]
	const { on, dueOn, totalCents } = made
	const kept = { clientId: client.id, on, at: stamp.at, by }
	tx.insert(invoice)
		.values({ ...kept, number, bill: bill.key, dueOn, totalCents, words })
		.run()
	tx.insert(invoiceAsked).values({ number }).run()
	tx.insert(entry)
		.values({ ...kept, id, is: 'invoice', cents: totalCents, invoice: number })
		.run()
	const facts = { bill: bill.key, cents: totalCents, due: dueOn, entry: id, on }
	append(tx, stamp, viewer, {
		act: 'invoice written',
		object: `invoice ${number}`,
		client: client.id,
		facts,
		sealed: words,
	})
	for (const person of contactsOf(tx, client.id, { whoSeeMoney: true }))
		enqueue(tx, stamp, { message: 'invoice sent', person, facts: { invoice: number } })
	return number
}

export type Crediting = { readonly invoice: InvoiceNumber; readonly cents: Cents; readonly reason: string }
export type WrittenCredit =
	| { readonly ok: true }
	| Exclude<Credited, { ok: true }>
	| { readonly ok: false; readonly why: 'no such invoice' }

/** A credit note to an invoice of that client, sealed, with its entry and its line of the record. */
export function writeCredit(
	tx: Tx,
	stamp: Stamp,
	viewer: Viewer,
	{ client, today }: FoundAccount,
	{ invoice: number, cents, reason }: Crediting,
): WrittenCredit {
	const row = invoiceRows(tx, client.id).find((each) => each.number === number)
	const of = row && invoiceIn(tx, row)
	if (of === undefined) return { ok: false, why: 'no such invoice' }
	const writtenOffCents = sum(
		standing(ledgerOf(tx, client.id)).flatMap((each) =>
			each.is === 'write-off' && each.invoice === number ? [each.cents] : [],
		),
	)
	const asked = { number: nextCredit(lastCredit(tx), today), on: today, cents, reason, writtenOffCents }
	const made = makeNote(of, notesTo(tx, number), asked)
	if (!made.ok) return made
	const words = seal(tx, stamp, client.id, made.note)
	const [id, by] = [stamp.id<'entry'>(), byOf(viewer)]
	const kept = { clientId: client.id, on: today, at: stamp.at, by, invoice: number }
	tx.insert(creditNote)
		.values({ ...kept, number: asked.number, totalCents: cents, words })
		.run()
	tx.insert(entry)
		.values({ ...kept, id, is: 'credit note', cents, creditNote: asked.number })
		.run()
	append(tx, stamp, viewer, {
		act: 'invoice credited',
		object: `credit note ${asked.number}`,
		client: client.id,
		facts: { cents, entry: id, invoice: number, on: today },
		sealed: words,
	})
	return { ok: true }
}
