import { describe, expect, test } from 'vitest'
import { accountOf } from '@/lib/money/ledger/account'
import { balanceOf } from '@/lib/money/ledger/effect'
import type { Ledger } from '@/lib/money/ledger/entry'
import { credited, invoiced, paid, refunded, undoing, writtenOff } from '../sample'

const older = invoiced(1, '10-09', '10-09', 300)
const newer = invoiced(2, '11-20', '12-20', 500)

/** Open amounts of the invoices, the oldest first; then what is kept as credit. */
const stand = (ledger: Ledger) => {
	const { invoices, creditCents } = accountOf(ledger)
	return [...invoices.map(({ openCents }) => openCents), creditCents]
}

describe('where a client stands', () => {
	test.each<{ name: string; ledger: Ledger; is: number[] }>([
		{ name: 'nothing happened', ledger: [], is: [0] },
		{ name: 'two invoices', ledger: [older, newer], is: [300, 500, 0] },
		{ name: 'a payment goes to the oldest', ledger: [newer, older, paid(3, '11-25', 320)], is: [0, 480, 0] },
		{ name: 'a part payment', ledger: [older, paid(3, '11-25', 120)], is: [180, 0] },
		{
			name: 'a payment goes to the invoice that it names',
			ledger: [older, newer, paid(3, '11-25', 320, 2)],
			is: [300, 180, 0],
		},
		{ name: 'its rest to the oldest', ledger: [older, newer, paid(3, '11-25', 560, 2)], is: [240, 0, 0] },
		{ name: 'more than all: kept', ledger: [older, paid(3, '11-25', 410)], is: [0, 110] },
		{ name: 'what is kept pays the next invoice', ledger: [older, paid(3, '11-25', 410), newer], is: [0, 390, 0] },
		{ name: 'a credit note', ledger: [older, credited(3, '11-02', 1, 90)], is: [210, 0] },
		{
			name: 'a credit note to what is paid',
			ledger: [older, paid(4, '11-01', 300), credited(3, '11-02', 1, 90)],
			is: [0, 90],
		},
		{ name: 'a write-off', ledger: [older, paid(4, '11-01', 20), writtenOff(3, '11-02', 1, 280)], is: [0, 0] },
		{
			name: 'a refund of what was kept',
			ledger: [older, paid(4, '11-01', 410), refunded(3, '11-02', 70)],
			is: [0, 40],
		},
		{ name: 'a payment undone', ledger: [older, paid(4, '11-01', 300), undoing(5, '11-02', 4)], is: [300, 0] },
		{
			name: 'one of two payments undone',
			ledger: [older, paid(4, '11-01', 110), paid(6, '11-01', 70), undoing(5, '11-02', 4)],
			is: [230, 0],
		},
	])('$name', ({ ledger, is }) => {
		expect(stand(ledger)).toEqual(is)
		const open = is.slice(0, -1).reduce((all, each) => all + each, 0)
		expect(balanceOf(ledger)).toBe(open - (is.at(-1) ?? 0))
	})

	test('of one day, the invoice with the smaller number is the older', () => {
		const tenth = invoiced(1, '10-09', '10-09', 300, 10_000)
		const ninth = invoiced(2, '10-09', '11-09', 500, 9999)
		const { invoices } = accountOf([tenth, ninth, paid(3, '10-10', 300)])
		expect(invoices.map(({ number, openCents }) => [number, openCents])).toEqual([
			['2026-9999', 200],
			['2026-10000', 300],
		])
	})

	test('what is left and what was paid stand apart', () => {
		const ledger = [older, credited(3, '11-02', 1, 90), writtenOff(4, '11-03', 1, 30), paid(5, '11-04', 100)]
		expect(accountOf(ledger).invoices).toEqual([
			{
				...{ number: '2026-0001', on: '2026-10-09', dueOn: '2026-10-09' },
				...{ cents: 300, leftCents: 180, paidCents: 100, openCents: 80 },
			},
		])
	})
})
