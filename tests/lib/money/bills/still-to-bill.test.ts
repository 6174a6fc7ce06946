import { describe, expect, test } from 'vitest'
import type { Bill, Issued } from '@/lib/money/bills/bill'
import { stillToBill } from '@/lib/money/bills/still-to-bill'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { charge, invoiceNumber } from '../sample'

const today = day('2026-11-20')
const bill = (key: string, amount: number, on: string | null): Bill => ({
	...{ key, part: { is: 'whole' }, charge: charge(amount) },
	dated: on === null ? null : { on: day(on), netDays: 0 },
})
const issued = (key: string, n: number, left: number): Issued => ({
	key,
	number: invoiceNumber(n),
	leftCents: cents(left),
})

describe('what is still to be billed', () => {
	const bills = [bill('past', 310, '2026-11-03'), bill('now', 520, '2026-11-20'), bill('later', 740, '2026-11-21')]

	test('what has come to its day, and nothing that has none', () => {
		const found = stillToBill([...bills, bill('unknown', 960, null)], [], today)
		expect(found).toEqual({ invoices: bills.slice(0, 2), credits: [] })
	})

	test('nothing twice, whatever was credited of it by hand', () => {
		const before = [issued('past', 1, 0), issued('now', 2, 519)]
		expect(stillToBill(bills, before, today)).toEqual({ invoices: [], credits: [] })
	})

	test('what is owed no more is credited, the latest invoice of a bill first', () => {
		const before = [issued('past', 1, 310), issued('past', 2, 200), issued('gone', 3, 81), issued('now', 4, 520)]
		expect(stillToBill(bills, before, today).credits).toEqual([
			{ number: invoiceNumber(2), cents: 200 },
			{ number: invoiceNumber(3), cents: 81 },
		])
	})

	test('what was written off of a bill is not credited as well', () => {
		expect(stillToBill([], [issued('gone', 1, 0)], today).credits).toEqual([])
	})
})
