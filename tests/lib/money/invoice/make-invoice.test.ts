import { describe, expect, test } from 'vitest'
import type { Bill } from '@/lib/money/bills/bill'
import { type Invoice, invoiceSchema } from '@/lib/money/invoice/invoice'
import { correctedInvoice, makeInvoice } from '@/lib/money/invoice/make-invoice'
import { cents } from '@/lib/units/cents'
import { addDays, day } from '@/lib/units/day'
import { charge, invoiceNumber } from '../sample'
import { heading, telling } from './sample'

const on = day('2026-11-20')
const bill = (part: Bill['part'], net: number, netDays = 0): Bill => ({
	...{ key: `proposal 1 ${part.is}`, part, charge: charge(net, [6000, net, 27]) },
	dated: { on, netDays },
})
const whole = bill({ is: 'whole' }, 450, 30)
const read = (invoice: Invoice) => invoice.lines.map(({ words, count, cents: amount }) => [words, count, amount])

describe('an invoice', () => {
	test('of a whole season, to the letter', () => {
		expect(makeInvoice(whole, heading, telling, on)).toEqual({
			...{ v: 1, is: 'invoice', number: '2026-0007', on, about: 'winter 2026–27', bill: 'proposal 1 whole' },
			...{ currency: 'USD', from: 'Sill & Stem', to: { name: 'Quay Books', address: '3 Quay' } },
			...{ purchaseOrder: 'PO 88', exemptCertificate: null, pay: 'By check to the studio.' },
			...{ terms: { from: on, netDays: 30 }, dueOn: '2026-12-20' },
			lines: [
				{ words: 'Left urn', count: 1, cents: 310 },
				{ words: 'Design', count: 1, cents: 140 },
			],
			tax: [{ milliPercent: 6000, baseCents: 450, cents: 27 }],
			totalCents: 477,
		})
	})

	test.each([
		{ name: 'a deposit', of: bill({ is: 'deposit' }, 225), lines: [['Deposit: Winter 2026–27', 1, 225]] },
		{ name: 'what remains', of: bill({ is: 'remains' }, 91), lines: [['What remains due: Winter 2026–27', 1, 91]] },
		{
			name: 'an instalment',
			of: bill({ is: 'instalment', nth: 2, of: 4 }, 333),
			lines: [['Instalment 2 of 4: Winter 2026–27', 1, 333]],
		},
		{
			name: 'a balance: all of it, less the deposit',
			of: bill({ is: 'balance' }, 228),
			lines: [
				['Left urn', 1, 310],
				['Design', 1, 140],
				['Less the deposit, invoice 2026-0002', 1, -222],
			],
		},
	])('of $name', ({ of, lines }) => {
		expect(read(makeInvoice(of, heading, telling, on))).toEqual(lines)
	})

	test('of a balance whose deposit was asked for elsewhere says what is left', () => {
		const none = { ...telling, deposit: null }
		expect(read(makeInvoice(bill({ is: 'balance' }, 228), heading, none, on))).toEqual([
			['Balance: Winter 2026–27', 1, 228],
		])
	})

	test('written late is due by the install, and never before it is written', () => {
		const late = (days: number) => makeInvoice(whole, heading, telling, addDays(on, days)).dueOn
		expect([late(0), late(12), late(30), late(35)]).toEqual(['2026-12-20', '2026-12-20', '2026-12-20', '2026-12-25'])
	})

	test('none before its day, and none while its day is not known', () => {
		expect(() => makeInvoice(whole, heading, telling, day('2026-11-19'))).toThrow('not to be asked for yet')
		expect(() => makeInvoice({ ...whole, dated: null }, heading, telling, on)).toThrow('not to be asked for yet')
	})

	test('lines that are not those of the bill are a broken promise', () => {
		expect(() => makeInvoice(bill({ is: 'whole' }, 449), heading, telling, on)).toThrow('does not add up')
	})

	test('put right: another number and day, the terms as they were', () => {
		const next = { number: invoiceNumber(8), on: day('2026-11-23') }
		const right = correctedInvoice(makeInvoice(whole, heading, telling, on), { purchaseOrder: 'PO 91' }, next)
		expect([right.number, right.on, right.dueOn, right.purchaseOrder, right.totalCents]).toEqual([
			...['2026-0008', '2026-11-23', '2026-12-20', 'PO 91', 477],
		])
	})
})

describe('what is read back as an invoice', () => {
	const good = makeInvoice(whole, heading, telling, on)
	const [line] = good.lines
	test('is what was frozen', () => {
		expect(invoiceSchema.parse(JSON.parse(JSON.stringify(good)))).toEqual(good)
	})

	test.each([
		{ name: 'a cost rides along', bad: { ...good, costCents: 210 } },
		{
			name: 'a cost rides along in a line',
			bad: { ...good, lines: [{ ...line, costCents: 1 }, ...good.lines.slice(1)] },
		},
		{ name: 'a cent is missing', bad: { ...good, totalCents: cents(476) } },
		{ name: 'the tax is another', bad: { ...good, tax: [{ ...good.tax[0], cents: 28 }] } },
		{
			name: 'a rate stands twice',
			bad: { ...good, tax: [...good.tax, { milliPercent: 6000, baseCents: 0, cents: 0 }] },
		},
		{ name: 'it is due by other terms', bad: { ...good, dueOn: '2026-12-21' } },
		{ name: 'its days are reversed', bad: { ...good, dueOn: '2026-11-19' } },
		{ name: 'it has the number of another year', bad: { ...good, number: '2025-0007' } },
		{ name: 'it is exempt and taxed', bad: { ...good, exemptCertificate: 'EX-1' } },
		{ name: 'it has no lines', bad: { ...good, lines: [], tax: [], totalCents: 0 } },
		{ name: 'it is of another version', bad: { ...good, v: 2 } },
		{ name: 'half a cent', bad: { ...good, totalCents: 476.5 } },
		{ name: '30 February', bad: { ...good, on: '2026-02-30' } },
	])('refused: $name', ({ bad }) => {
		expect(invoiceSchema.safeParse(bad).success).toBe(false)
	})
})
