import { describe, expect, test } from 'vitest'
import { accountOf } from '@/lib/money/ledger/account'
import { owedInWords } from '@/lib/money/words/owed'
import { day } from '@/lib/units/day'
import { charge, invoiced, money, paid } from '../sample'

const first = invoiced(1, '10-09', '10-24', 120_405)
const second = invoiced(2, '11-09', '11-24', 31_875)
const bill = {
	bill: {
		key: 'a',
		part: { is: 'instalment', nth: 3, of: 4 },
		charge: charge(30_000),
		dated: { on: day('2026-12-09'), netDays: 15 },
	},
	about: 'service agreement 2026–2027',
	invoices: [],
} as const
const said = (ledger: Parameters<typeof accountOf>[0], today: string, bills: readonly (typeof bill)[] = []) =>
	owedInWords(accountOf(ledger), bills, money, day(today))

describe('what a client owes, in a sentence', () => {
	test.each([
		['on the day it is due', '2026-10-24', '$1,204.05 is due 24 October 2026, invoice 2026-0001.'],
		['a day later', '2026-10-25', '$1,204.05 was due 24 October 2026, invoice 2026-0001.'],
	])('one invoice, %s', (_, today, words) => expect(said([first], today)).toBe(words))

	test('several: all of it, and what is due first', () => {
		expect(said([first, second], '2026-11-20')).toBe(
			'$1,522.80 is open. Of it $1,204.05 was due 24 October 2026, invoice 2026-0001.',
		)
		expect(said([first, second, paid(3, '11-19', 120_405, 1)], '2026-11-20')).toBe(
			'$318.75 is due 24 November 2026, invoice 2026-0002.',
		)
	})

	test('nothing now: what comes next, or that all is paid; of nothing ever asked for nothing is said', () => {
		const all = [first, paid(2, '10-20', 120_405, 1)]
		expect(said(all, '2026-11-01', [bill])).toBe(
			'Nothing is due now. Next: Service agreement 2026–2027. Instalment 3 of 4, $300.00, due 24 December 2026.',
		)
		expect(said(all, '2026-11-01')).toBe('Nothing is due. All is paid.')
		expect(said([], '2026-11-01')).toBeNull()
	})
})
