import { expect, test } from 'vitest'
import { lateList } from '@/lib/money/late/late-list'
import { accountOf } from '@/lib/money/ledger/account'
import { lateInWords, lateListInWords } from '@/lib/money/words/late'
import { day } from '@/lib/units/day'
import { clientId, invoiced, money, paid, writtenOff } from '../sample'

const today = day('2026-12-10')
const accounts = [
	{
		client: clientId(1),
		account: accountOf([
			invoiced(1, '10-01', '11-09', 310),
			invoiced(2, '11-20', '12-10', 520),
			invoiced(3, '09-01', '09-10', 740),
			paid(4, '11-01', 700, 3),
		]),
	},
	{ client: clientId(2), account: accountOf([invoiced(5, '11-10', '12-25', 960)]) },
	{ client: clientId(3), account: accountOf([invoiced(6, '08-01', '08-16', 81), writtenOff(7, '12-01', 6, 81)]) },
	{ client: clientId(4), account: accountOf([invoiced(8, '08-01', '08-16', 120), paid(9, '12-01', 20)]) },
]
const found = lateList(accounts, today)

test('who is late, the longest first, with what is open by band', () => {
	expect(found.clients.map(({ client, lateCents }) => [client, lateCents])).toEqual([
		[clientId(4), 100],
		[clientId(1), 350],
	])
	expect(found.clients[1]?.byBand).toEqual({
		...{ 'not due yet': 520, '1 to 30 days': 0, '31 to 60 days': 310, '61 to 90 days': 0, 'over 90 days': 40 },
	})
	expect(found.clients[1]?.invoices.map(({ number, daysLate, band }) => [number, daysLate, band])).toEqual([
		['2026-0003', 91, 'over 90 days'],
		['2026-0001', 31, '31 to 60 days'],
	])
})

test('the bands of all sum to what is open', () => {
	expect(found.byBand).toEqual({
		...{ 'not due yet': 1480, '1 to 30 days': 0, '31 to 60 days': 310, '61 to 90 days': 0, 'over 90 days': 140 },
	})
	expect(found.lateCents).toBe(450)
	const open = accounts.reduce((all, { account }) => all + account.openCents, 0)
	expect(Object.values(found.byBand).reduce((all, each) => all + each, 0)).toBe(open)
})

test('in words', () => {
	expect(lateListInWords(found, money)).toBe('Two clients owe $4.50 past its day.')
	expect(lateListInWords(lateList(accounts.slice(3), today), money)).toBe('One client owes $1.00 past its day.')
	expect(lateListInWords(lateList([], today), money)).toBe('Nobody is late.')
	const told = found.clients.flatMap(({ invoices }) => invoices.map((each) => lateInWords(each, money)))
	expect(told[0]).toBe('Invoice 2026-0008: $1.00 open, 116 days past due')
})
