import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
	type InvoiceNumber,
	inOrder,
	isCreditNumber,
	isInvoiceNumber,
	nextCredit,
	nextInvoice,
} from '@/lib/money/invoice/number'
import { addDays, day } from '@/lib/units/day'
import { creditNumber, invoiceNumber } from '../sample'

const november = day('2026-11-20')

describe('the number of an invoice', () => {
	test.each(['2026-0001', '2026-9999', '2026-10000', '1999-123456'])('%s is one', (text) => {
		expect(isInvoiceNumber(text)).toBe(true)
		expect(isCreditNumber(`C${text}`)).toBe(true)
		expect(isCreditNumber(text)).toBe(false)
		expect(isInvoiceNumber(`C${text}`)).toBe(false)
	})

	test.each(['2026-0000', '2026-001', '2026-00012', '26-0001', '2026-0001 ', '2026-1e10', '٢٠٢٦-٠٠٠١', ''])(
		'“%s” is none',
		(text) => {
			expect([isInvoiceNumber(text), isCreditNumber(`C${text}`)]).toEqual([false, false])
		},
	)

	test('begins at 1, in each year', () => {
		expect(nextInvoice(null, november)).toBe('2026-0001')
		expect(nextInvoice(invoiceNumber(41), november)).toBe('2026-0042')
		expect(nextInvoice(invoiceNumber(9999), november)).toBe('2026-10000')
		expect(nextInvoice(invoiceNumber(41), day('2027-01-02'))).toBe('2027-0001')
		expect(nextCredit(null, november)).toBe('C2026-0001')
		expect(nextCredit(creditNumber(7), november)).toBe('C2026-0008')
	})

	test('never goes back a year', () => {
		expect(() => nextInvoice(invoiceNumber(3), day('2025-12-31'))).toThrow('2026-0003 was given before 2025-12-31')
	})

	test('over any days that go forward: each year from 1 on, none left out, in order', () => {
		fc.assert(
			fc.property(fc.array(fc.nat(90), { maxLength: 60 }), (gaps) => {
				let today = november
				const given: InvoiceNumber[] = []
				for (const gap of gaps) {
					today = addDays(today, gap)
					given.push(nextInvoice(given.at(-1) ?? null, today))
				}
				expect(given.toReversed().toSorted(inOrder)).toEqual(given)
				for (const year of new Set(given.map((number) => number.slice(0, 4)))) {
					const of = given.filter((number) => number.startsWith(year))
					expect(of).toEqual(of.map((_, index) => `${year}-${String(index + 1).padStart(4, '0')}`))
				}
			}),
		)
	})
})
