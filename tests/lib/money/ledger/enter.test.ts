import { describe, expect, test } from 'vitest'
import { enter } from '@/lib/money/ledger/enter'
import { type Entry, entrySchema, type Ledger } from '@/lib/money/ledger/entry'
import { moneyRefusalInWords } from '@/lib/money/words/refusal'
import { day } from '@/lib/units/day'
import { credited, invoiced, paid, refunded, undoing, writtenOff } from '../sample'

const today = day('2026-12-01')
const why = (ledger: Ledger, entry: Entry, keepRest = false) => {
	const found = enter(ledger, entry, { today, keepRest })
	return found.ok ? null : found.why
}

const two = [invoiced(1, '10-09', '10-09', 300), invoiced(2, '11-20', '12-20', 500)]
const over = [...two, paid(3, '11-25', 850)]
const given = [...over, refunded(4, '11-26', 50)]
const undone = [...two, paid(3, '11-25', 200), undoing(4, '11-26', 3)]
const written = [...two, writtenOff(3, '11-25', 1, 300)]

describe('what may be written into an account', () => {
	test.each<{ name: string; ledger: Ledger; entry: Entry; why: ReturnType<typeof why> }>([
		{ name: 'an invoice', ledger: two, entry: invoiced(3, '11-25', '11-25', 40), why: null },
		{ name: 'a number twice', ledger: two, entry: invoiced(9, '11-25', '11-25', 40, 2), why: 'number given before' },
		{ name: 'all of an invoice', ledger: two, entry: paid(9, '12-01', 500, 2), why: null },
		{ name: 'a cent more', ledger: two, entry: paid(9, '12-01', 501, 2), why: 'more than the invoice has open' },
		{ name: 'all that is due', ledger: two, entry: paid(9, '12-01', 800), why: null },
		{ name: 'a cent more than is due', ledger: two, entry: paid(9, '12-01', 801), why: 'more than is due' },
		{ name: 'where nothing is due', ledger: [], entry: paid(9, '12-01', 1), why: 'more than is due' },
		{ name: 'an invoice of nobody', ledger: two, entry: paid(9, '12-01', 20, 7), why: 'no such invoice' },
		{ name: 'tomorrow', ledger: two, entry: paid(9, '12-02', 20), why: 'dated ahead' },
		{ name: 'what is kept, back', ledger: over, entry: refunded(9, '12-01', 50), why: null },
		{ name: 'a cent more back', ledger: over, entry: refunded(9, '12-01', 51), why: 'more than their credit' },
		{ name: 'money back that is due', ledger: two, entry: refunded(9, '12-01', 1), why: 'more than their credit' },
		{ name: 'a credit note to what is paid', ledger: over, entry: credited(9, '12-01', 1, 300), why: null },
		{
			name: 'a cent more of it',
			ledger: over,
			entry: credited(9, '12-01', 1, 301),
			why: 'more than is left of the invoice',
		},
		{
			name: 'credit for what was written off',
			ledger: written,
			entry: credited(9, '12-01', 1, 1),
			why: 'more than is left of the invoice',
		},
		{ name: 'credit to nobody’s', ledger: two, entry: credited(9, '12-01', 7, 1), why: 'no such invoice' },
		{
			name: 'credit twice under one number',
			ledger: [...two, credited(9, '12-01', 1, 5)],
			entry: credited(9, '12-01', 1, 5),
			why: 'number given before',
		},
		{ name: 'all that is open, off', ledger: two, entry: writtenOff(9, '12-01', 2, 500), why: null },
		{ name: 'a cent more off', ledger: two, entry: writtenOff(9, '12-01', 2, 501), why: 'more than is open' },
		{ name: 'what is paid, off', ledger: over, entry: writtenOff(9, '12-01', 1, 1), why: 'more than is open' },
		{ name: 'nobody’s, off', ledger: two, entry: writtenOff(9, '12-01', 7, 1), why: 'no such invoice' },
		{ name: 'a payment undone', ledger: over, entry: undoing(9, '12-01', 3), why: null },
		{ name: 'undone twice', ledger: undone, entry: undoing(9, '12-01', 3), why: 'undone already' },
		{ name: 'an undoing undone', ledger: undone, entry: undoing(9, '12-01', 4), why: 'undoes nothing by itself' },
		{ name: 'nothing undone', ledger: two, entry: undoing(9, '12-01', 8), why: 'no such entry' },
		{ name: 'an invoice undone', ledger: two, entry: undoing(9, '12-01', 1), why: 'corrected by a credit note' },
		{
			name: 'a credit note undone',
			ledger: [...two, credited(5, '11-25', 1, 9)],
			entry: undoing(9, '12-01', 5),
			why: 'corrected by a credit note',
		},
		{
			name: 'a payment undone that was given back',
			ledger: given,
			entry: undoing(9, '12-01', 3),
			why: 'given back since',
		},
		{ name: 'the refund undone', ledger: given, entry: undoing(9, '12-01', 4), why: null },
		{ name: 'then the payment', ledger: [...given, undoing(5, '11-27', 4)], entry: undoing(9, '12-01', 3), why: null },
		{ name: 'a write-off undone', ledger: written, entry: undoing(9, '12-01', 3), why: null },
	])('$name', ({ ledger, entry, why: expected }) => {
		expect(why(ledger, entry)).toBe(expected)
	})

	test('more than is due may be kept, when that is said', () => {
		expect(why(two, paid(9, '12-01', 801), true)).toBeNull()
		expect(why(two, paid(9, '12-01', 501, 2), true)).toBeNull()
		expect(why(two, paid(9, '12-01', 501, 7), true)).toBe('no such invoice')
	})

	test('a refusal says what to do', () => {
		expect(moneyRefusalInWords('more than is due')).toBe(
			'That is more than is due. Nothing was written: put the amount right, or say that the rest is kept for the client.',
		)
	})
})

describe('what is read back as an entry', () => {
	const all = [...given, credited(5, '11-27', 1, 9), writtenOff(6, '11-27', 2, 9), undoing(7, '11-28', 6)]
	test.each(all)('$is', (entry) => {
		expect(entrySchema.parse(JSON.parse(JSON.stringify(entry)))).toEqual(entry)
	})

	test.each([
		{ name: 'nothing paid', bad: paid(1, '11-25', 0) },
		{ name: 'less than nothing', bad: paid(1, '11-25', -20) },
		{ name: 'half a cent', bad: { ...paid(1, '11-25', 20), cents: 19.5 } },
		{ name: 'days reversed', bad: invoiced(1, '11-25', '11-24', 300) },
		{ name: 'no reason', bad: { ...writtenOff(1, '11-25', 1, 5), reason: '' } },
		{ name: 'a note of the studio', bad: { ...paid(1, '11-25', 20), note: 'always late' } },
		{ name: 'means that nobody knows', bad: { ...paid(1, '11-25', 20), means: 'barter' } },
		{ name: 'an amount to an undoing', bad: { ...undoing(1, '11-25', 2), cents: 20 } },
		{ name: 'a day that is none', bad: { ...paid(1, '11-25', 20), on: '2026-11-31' } },
	])('refused: $name', ({ bad }) => {
		expect(entrySchema.safeParse(bad).success).toBe(false)
	})
})
