import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { chargeCents } from '@/lib/money/charge'
import { type CreditNote, creditNote, creditNoteSchema, leftOf } from '@/lib/money/invoice/credit-note'
import { correctedInvoice, makeInvoice } from '@/lib/money/invoice/make-invoice'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { charge, creditNumber, invoiceNumber } from '../sample'
import { heading, telling } from './sample'

const on = day('2026-11-20')
const later = day('2026-12-01')
const tax = [
	[6000, 300, 18],
	[7250, 150, 11],
] as const
const invoice = makeInvoice(
	{ key: 'a', part: { is: 'whole' }, dated: { on, netDays: 15 }, charge: charge(450, ...tax) },
	heading,
	telling,
	on,
)
const asked = (amount: number, more: { reason?: string; writtenOff?: number; n?: number } = {}) => ({
	...{ number: creditNumber(more.n ?? 1), on: later, cents: cents(amount), reason: more.reason ?? 'one urn fewer' },
	writtenOffCents: cents(more.writtenOff ?? 0),
})
function taken(amount: number, notes: readonly CreditNote[] = []): CreditNote {
	const found = creditNote(invoice, notes, asked(amount, { n: notes.length + 1 }))
	if (!found.ok) throw new Error(found.why)
	return found.note
}

describe('a credit note', () => {
	test('takes the whole invoice back', () => {
		expect(taken(479)).toEqual({
			...{ v: 1, is: 'credit note', number: 'C2026-0001', on: later, invoice: '2026-0007', reason: 'one urn fewer' },
			...{ currency: 'USD', from: 'Sill & Stem', to: { name: 'Quay Books', address: '3 Quay' }, totalCents: 479 },
			lines: [{ words: 'Invoice 2026-0007 of 20 November 2026, taken back', count: 1, cents: 450 }],
			tax: invoice.tax,
		})
	})

	test('or a part, its tax in proportion', () => {
		const { lines, tax: back, totalCents } = taken(100)
		expect(lines).toEqual([{ words: 'Part of invoice 2026-0007 of 20 November 2026', count: 1, cents: 94 }])
		expect(back.map((each) => each.cents)).toEqual([4, 2])
		expect(totalCents).toBe(100)
	})

	test.each([
		{ name: 'a cent more than the invoice', of: asked(480), why: 'more than is left of the invoice' },
		{ name: 'what was written off', of: asked(380, { writtenOff: 100 }), why: 'more than is left of the invoice' },
		{ name: 'nothing', of: asked(0), why: 'nothing to credit' },
		{ name: 'less than nothing', of: asked(-5), why: 'nothing to credit' },
		{ name: 'no reason', of: asked(100, { reason: ' ' }), why: 'no reason given' },
	])('refuses $name', ({ of, why }) => {
		expect(creditNote(invoice, [], of)).toEqual({ ok: false, why })
	})

	test('takes all but what was written off', () => {
		expect(creditNote(invoice, [], asked(379, { writtenOff: 100 })).ok).toBe(true)
	})

	test('of another invoice is a broken promise', () => {
		const other = { ...taken(50), invoice: invoiceNumber(9) }
		expect(() => leftOf(invoice, [other])).toThrow('C2026-0001 is not to 2026-0007')
	})

	test('several in turn: each exact, never more than the invoice, all of it in the end in every figure', () => {
		fc.assert(
			fc.property(fc.array(fc.integer({ min: 1, max: 300 }), { maxLength: 6 }), (amounts) => {
				const notes: CreditNote[] = []
				for (const amount of amounts) {
					const open = chargeCents(leftOf(invoice, notes))
					const found = creditNote(invoice, notes, asked(amount, { n: notes.length + 1 }))
					expect(found.ok).toBe(amount <= open)
					if (found.ok) notes.push(creditNoteSchema.parse(JSON.parse(JSON.stringify(found.note))))
					expect(chargeCents(leftOf(invoice, notes))).toBe(amount <= open ? open - amount : open)
				}
				const open = chargeCents(leftOf(invoice, notes))
				if (open > 0) notes.push(taken(open, notes))
				expect(leftOf(invoice, notes)).toEqual(charge(0, [6000, 0, 0], [7250, 0, 0]))
			}),
		)
	})

	test('an invoice that was wrong: all of it back, and a new one', () => {
		const right = correctedInvoice(invoice, { purchaseOrder: 'PO 91' }, { number: invoiceNumber(8), on: later })
		expect(taken(invoice.totalCents).totalCents).toBe(invoice.totalCents)
		expect([right.totalCents, right.bill]).toEqual([invoice.totalCents, invoice.bill])
	})

	test.each([
		{ name: 'another sum', bad: { totalCents: 99 } },
		{ name: 'a cost', bad: { costCents: 4 } },
		{ name: 'no reason', bad: { reason: '' } },
		{ name: 'the number of an invoice', bad: { number: '2026-0001' } },
	])('is not read back with $name', ({ bad }) => {
		expect(creditNoteSchema.safeParse({ ...taken(100), ...bad }).success).toBe(false)
	})
})
