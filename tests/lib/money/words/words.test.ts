import { describe, expect, test } from 'vitest'
import type { Bill } from '@/lib/money/bills/bill'
import { statement } from '@/lib/money/statement/statement'
import { yearSpan } from '@/lib/money/statement/year'
import { balanceInWords } from '@/lib/money/words/balance'
import { billInWords } from '@/lib/money/words/bill'
import { entryInWords } from '@/lib/money/words/entry'
import { exemptInWords, taxInWords, termsInWords } from '@/lib/money/words/invoice'
import { isMoneyRefusal } from '@/lib/money/words/refusal'
import { statementView } from '@/lib/money/words/statement'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { charge, credited, entryId, invoiced, money, paid, refunded, undoing, writtenOff } from '../sample'

const ledger = [
	invoiced(1, '10-09', '10-24', 120_405),
	paid(2, '11-02', 100_000, 1),
	{ ...paid(3, '11-03', 25_000, null, 'cash'), reference: '' },
	{ ...paid(4, '11-04', 10, null, 'other') },
	undoing(5, '11-05', 3),
	credited(6, '11-06', 1, 20_400),
	writtenOff(7, '11-07', 1, 5),
	refunded(8, '11-08', 10),
]

describe('entries in words', () => {
	test.each([
		[0, 'Invoice 2026-0001, due 24 October 2026'],
		[1, 'Payment by check, 1002, for invoice 2026-0001'],
		[2, 'Payment in cash'],
		[3, 'Payment, 1004'],
		[4, 'Undone, typed twice: “Payment in cash” of 3 November 2026'],
		[5, 'Credit note C2026-0006 to invoice 2026-0001'],
		[6, 'Written off from invoice 2026-0001: shop closed for good'],
		[7, 'Refund by bank transfer'],
	])('%i: %s', (at, words) => {
		expect(ledger.map((entry) => entryInWords(entry, ledger))[at]).toBe(words)
	})

	test('an undoing of nothing is a broken promise', () => {
		const lost = { ...undoing(9, '11-09', 1), of: entryId(77) }
		expect(() => entryInWords(lost, ledger)).toThrow('undoes an entry that is not there')
	})
})

test('a statement in words', () => {
	const view = statementView(statement(ledger.slice(0, 4), yearSpan(2026)), ledger, money)
	expect([view.opening, view.closing]).toEqual([
		'Before 1 January 2026: Nothing to pay',
		'At the end: $46.05 kept as credit',
	])
	expect(view.lines.map(({ day: on, charged, paid: back, balance }) => [on, charged, back, balance])).toEqual([
		['9 October 2026', '$1,204.05', '', '$1,204.05'],
		['2 November 2026', '', '$1,000.00', '$204.05'],
		['3 November 2026', '', '$250.00', '−$45.95'],
		['4 November 2026', '', '$0.10', '−$46.05'],
	])
})

test('a balance in words', () => {
	expect([0, 12_000, -3001].map((each) => balanceInWords(cents(each), money))).toEqual([
		'Nothing to pay',
		'$120.00 to pay',
		'$30.01 kept as credit',
	])
})

describe('an invoice in words', () => {
	const from = day('2026-11-20')
	test('its terms', () => {
		const net = { terms: { from, netDays: 30 }, dueOn: day('2026-12-20') }
		expect(termsInWords(net)).toBe('Due 20 December 2026: 30 days after 20 November 2026')
		expect(termsInWords({ terms: { from, netDays: 0 }, dueOn: from })).toBe('Due 20 November 2026')
	})

	test('its tax', () => {
		expect(taxInWords({ milliPercent: 7250, baseCents: cents(118_000) }, money)).toBe('Sales tax, 7.25 % of $1,180.00')
		expect(exemptInWords({ exemptCertificate: 'EX-7' })).toBe('No sales tax: exempt, certificate EX-7.')
		expect(exemptInWords({ exemptCertificate: null })).toBeNull()
	})
})

test.each<[Bill['part'], string]>([
	[{ is: 'whole' }, 'All of it'],
	[{ is: 'deposit' }, 'Deposit'],
	[{ is: 'balance' }, 'Balance'],
	[{ is: 'remains' }, 'What remains due'],
	[{ is: 'instalment', nth: 3, of: 4 }, 'Instalment 3 of 4'],
])('a bill in words: $is', (part, words) => {
	const bill = { key: 'a', part, charge: charge(23_650, [6000, 23_650, 1419]) }
	expect(billInWords({ ...bill, dated: null }, money)).toBe(`${words}, $250.69, once it is in`)
	expect(billInWords({ ...bill, dated: { on: day('2026-11-20'), netDays: 15 } }, money)).toBe(
		`${words}, $250.69, due 5 December 2026`,
	)
})

test('what is no refusal has no words', () => {
	expect([isMoneyRefusal('more than is due'), isMoneyRefusal('toString')]).toEqual([true, false])
})
