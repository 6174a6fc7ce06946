import { z } from 'zod'
import { fullDay } from '../../format/day'
import { type Cents, zero } from '../../units/cents'
import type { Day } from '../../units/day'
import { daySchema as day } from '../../units/schema'
import { type Charge, chargeCents, part, taxed, without } from '../charge'
import type { Invoice } from './invoice'
import type { CreditNumber } from './number'
import { addsUp, commonParts, creditNumberSchema, invoiceNumberSchema, netOf } from './parts'

/** A credit note as it is frozen: amounts above zero that are taken off the invoice that it names. */
export const creditNoteSchema = z
	.strictObject({
		...commonParts,
		is: z.literal('credit note'),
		number: creditNumberSchema,
		on: day,
		invoice: invoiceNumberSchema,
		reason: z.string().min(1),
	})
	.refine(addsUp, 'does not add up')
	.refine(({ number, on }) => number.slice(1).startsWith(on.slice(0, 4)), 'has the number of another year')

export type CreditNote = z.infer<typeof creditNoteSchema>

const chargeOf = (of: Pick<Invoice, 'lines' | 'tax'>): Charge => ({ netCents: netOf(of), tax: of.tax })

/** The tax of a credit note may lack a rate of which nothing came back. */
const asIn = ({ tax }: Charge, of: Charge): Charge => ({
	...of,
	tax: tax.map(
		({ milliPercent }) =>
			of.tax.find((each) => each.milliPercent === milliPercent) ?? { milliPercent, baseCents: zero, cents: zero },
	),
})

/** An invoice less the credit notes to it. @throws when one of them is to another */
export function leftOf(invoice: Invoice, notes: readonly CreditNote[]): Charge {
	return notes.reduce((left, note) => {
		if (note.invoice !== invoice.number) throw new Error(`leftOf: ${note.number} is not to ${invoice.number}`)
		return without(left, asIn(left, chargeOf(note)))
	}, chargeOf(invoice))
}

export type Crediting = {
	readonly number: CreditNumber
	readonly on: Day
	readonly cents: Cents
	readonly reason: string
	/** Given up before, with a reason: it is not credited as well. */
	readonly writtenOffCents: Cents
}
export type Credited =
	| { readonly ok: true; readonly note: CreditNote }
	| { readonly ok: false; readonly why: 'more than is left of the invoice' | 'nothing to credit' | 'no reason given' }

const words = ({ number, on }: Invoice, isWhole: boolean) =>
	isWhole ? `Invoice ${number} of ${fullDay(on)}, taken back` : `Part of invoice ${number} of ${fullDay(on)}`

/** A credit note to an invoice, net and tax as they are left of it in proportion; never more than that. */
export function creditNote(invoice: Invoice, notes: readonly CreditNote[], asked: Crediting): Credited {
	const left = leftOf(invoice, notes)
	if (asked.cents <= 0) return { ok: false, why: 'nothing to credit' }
	if (asked.cents > chargeCents(left) - asked.writtenOffCents)
		return { ok: false, why: 'more than is left of the invoice' }
	if (asked.reason.trim() === '') return { ok: false, why: 'no reason given' }
	const { taken } = part(left, asked.cents)
	const isWhole = asked.cents === invoice.totalCents
	const { v, currency, from, to } = invoice
	const note = creditNoteSchema.parse({
		...{ v, is: 'credit note', currency, from, to, invoice: invoice.number },
		...{ number: asked.number, on: asked.on, reason: asked.reason, totalCents: asked.cents },
		lines: [{ words: words(invoice, isWhole), count: 1, cents: taken.netCents }],
		tax: taxed(taken),
	})
	return { ok: true, note }
}
