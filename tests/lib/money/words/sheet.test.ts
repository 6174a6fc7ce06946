import { describe, expect, test } from 'vitest'
import type { Bill } from '@/lib/money/bills/bill'
import { creditNote } from '@/lib/money/invoice/credit-note'
import { makeInvoice } from '@/lib/money/invoice/make-invoice'
import { amountRows, creditFacts, invoiceFacts } from '@/lib/money/words/sheet'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { heading, telling } from '../invoice/sample'
import { charge, creditNumber, money } from '../sample'

const on = day('2026-11-20')
const bill: Bill = {
	...{ key: 'proposal 1 whole', part: { is: 'whole' }, dated: { on, netDays: 30 } },
	charge: charge(450, [6000, 310, 19], [7250, 140, 10]),
}
const invoice = makeInvoice(bill, heading, telling, on)
const read = (facts: ReturnType<typeof invoiceFacts>) => facts.map(({ label, value }) => [label, value])

describe('what stands above the lines', () => {
	test('of an invoice', () => {
		expect(read(invoiceFacts(invoice))).toEqual([
			['Invoice', '2026-0007'],
			['Date', '20 November 2026'],
			['For', 'Winter 2026–27'],
			['Purchase order', 'PO 88'],
			['To be paid', 'Due 20 December 2026: 30 days after 20 November 2026'],
		])
	})

	test('of one without a purchase order', () => {
		const labels = invoiceFacts({ ...invoice, purchaseOrder: '' }).map(({ label }) => label)
		expect(labels).toEqual(['Invoice', 'Date', 'For', 'To be paid'])
	})

	test('of a credit note', () => {
		const asked = { number: creditNumber(3), on: day('2026-12-01'), cents: cents(50), reason: 'Too few.' }
		const made = creditNote(invoice, [], { ...asked, writtenOffCents: cents(0) })
		expect(made.ok && read(creditFacts(made.note))).toEqual([
			['Credit note', 'C2026-0003'],
			['Date', '1 December 2026'],
			['To invoice', '2026-0007'],
			['Reason', 'Too few.'],
		])
	})
})

describe('the column of amounts', () => {
	test('has the lines and then the taxes', () => {
		expect(amountRows(invoice, money).map(({ words, amount }) => [words, amount])).toEqual([
			['Left urn', '$3.10'],
			['Design', '$1.40'],
			['Sales tax, 6 % of $3.10', '$0.19'],
			['Sales tax, 7.25 % of $1.40', '$0.10'],
		])
	})

	test('tells lines apart that read alike', () => {
		const same = { words: 'Urn', count: 1, cents: cents(7) }
		const keys = amountRows({ lines: [same, same], tax: [] }, money).map(({ key }) => key)
		expect(new Set(keys).size).toBe(2)
	})
})
