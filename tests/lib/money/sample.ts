import { moneyFormat } from '@/lib/format/money'
import type { Charge } from '@/lib/money/charge'
import { type CreditNumber, type InvoiceNumber, isCreditNumber, isInvoiceNumber } from '@/lib/money/invoice/number'
import type { Entry, Means } from '@/lib/money/ledger/entry'
import type { Part } from '@/lib/pricing/price-list'
import { type Due, dueOf } from '@/lib/pricing/quote/due'
import type { Quote } from '@/lib/pricing/quote/quote'
import { hashOf } from '@/lib/record/hash'
import { type Cents, cents, sum, zero } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { type Id, id, type ProposalId } from '@/lib/units/id'
import { placeId } from '../pricing/sample'

/** Small accounts and approvals for the tests of what is billed and paid. */
export const money = moneyFormat('USD')

const numbered = (of: string, n: number) => `00000000-0000-7000-8000-00000${of}${String(n).padStart(6, '0')}`
export const proposalId = (n: number): ProposalId => id<'proposal'>(numbered('d', n))
export const agreementId = (n: number): Id<'agreement'> => id<'agreement'>(numbered('e', n))
export const entryId = (n: number): Id<'entry'> => id<'entry'>(numbered('f', n))
export const clientId = (n: number): Id<'client'> => id<'client'>(numbered('c', n))
export const revision = (n: number) => hashOf({ revision: n })

export function invoiceNumber(n: number): InvoiceNumber {
	const text = `2026-${String(n).padStart(4, '0')}`
	if (!isInvoiceNumber(text)) throw new Error(text)
	return text
}
export function creditNumber(n: number): CreditNumber {
	const text = `C2026-${String(n).padStart(4, '0')}`
	if (!isCreditNumber(text)) throw new Error(text)
	return text
}

export const charge = (net: number, ...tax: readonly (readonly [milliPercent: number, base: number, of: number])[]) =>
	({
		netCents: cents(net),
		tax: tax.map(([milliPercent, base, of]) => ({ milliPercent, baseCents: cents(base), cents: cents(of) })),
	}) satisfies Charge

export type Asked = {
	readonly kind: 'business' | 'household'
	readonly netDays: 15 | 30
	readonly depositPercent: number
	readonly agreed: number
	readonly apart: Charge
}

const lineOf = (bill: Part['bill'], amount: Cents): Part => ({
	is: 'design',
	name: 'Design',
	place: placeId(1),
	cents: amount,
	split: { plants: zero, goods: zero, labour: amount },
	bill,
})

/** A quote of one line for the agreement (no tax on it) and one line apart, due by the terms of `asked`. */
export function quoteOf({ kind, netDays, depositPercent, agreed, apart }: Asked): Pick<Quote, 'lines' | 'tax' | 'due'> {
	const tax = apart.tax.map((each) => ({ ...each, bill: 'apart' as const }))
	const total = sum([apart.netCents, ...tax.map((each) => each.cents), cents(agreed)])
	const due: Due[] = dueOf(total, cents(agreed), {
		is: 'price list',
		currency: 'USD',
		ratesVersion: 1,
		parts: [],
		discountPercent: 0,
		minimumVisitCents: null,
		tax: { taxable: { plants: true, goods: true, labour: true }, labour: 'taxed whole', basis: 'invoice', places: [] },
		payer: { kind, netDays, exemptCertificate: null },
		depositPercent,
		isUnderAgreement: agreed > 0,
	})
	return { lines: [lineOf('agreement', cents(agreed)), lineOf('apart', apart.netCents)], tax, due }
}

const on = (text: string) => day(`2026-${text}`)

export const invoiced = (n: number, date: string, due: string, amount: number, invoice = n): Entry => ({
	...{ is: 'invoice', id: entryId(n), on: on(date), dueOn: on(due) },
	...{ number: invoiceNumber(invoice), cents: cents(amount) },
})
export const credited = (n: number, date: string, invoice: number, amount: number): Entry => ({
	...{ is: 'credit note', id: entryId(n), on: on(date), number: creditNumber(n) },
	...{ invoice: invoiceNumber(invoice), cents: cents(amount) },
})
export const paid = (
	n: number,
	date: string,
	amount: number,
	invoice: number | null = null,
	means: Means = 'check',
): Entry => ({
	...{ is: 'payment', id: entryId(n), on: on(date), means, reference: `${1000 + n}` },
	...{ invoice: invoice === null ? null : invoiceNumber(invoice), cents: cents(amount) },
})
export const refunded = (n: number, date: string, amount: number): Entry => ({
	...{ is: 'refund', id: entryId(n), on: on(date), means: 'bank transfer', reference: '' },
	cents: cents(amount),
})
export const writtenOff = (n: number, date: string, invoice: number, amount: number): Entry => ({
	...{ is: 'write-off', id: entryId(n), on: on(date), reason: 'shop closed for good' },
	...{ invoice: invoiceNumber(invoice), cents: cents(amount) },
})
export const undoing = (n: number, date: string, of: number): Entry => ({
	...{ is: 'counter-entry', id: entryId(n), on: on(date), of: entryId(of), reason: 'typed twice' },
})
