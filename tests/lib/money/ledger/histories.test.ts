import fc from 'fast-check'
import { expect, test } from 'vitest'
import { accountOf } from '@/lib/money/ledger/account'
import { balanceOf } from '@/lib/money/ledger/effect'
import { enter } from '@/lib/money/ledger/enter'
import type { Entry, Ledger } from '@/lib/money/ledger/entry'
import { day } from '@/lib/units/day'
import { credited, entryId, invoiced, paid, refunded, undoing, writtenOff } from '../sample'
import { naive } from './naive'

const today = day('2026-12-31')
const runs = { numRuns: 600 }

type Draw = {
	readonly is: Entry['is']
	readonly date: number
	readonly amount: number
	readonly of: number
	readonly keepRest: boolean
}
const draws = fc.array(
	fc.record({
		is: fc.constantFrom(
			...([
				'invoice',
				'invoice',
				'payment',
				'payment',
				'credit note',
				'refund',
				'refund',
				'write-off',
				'counter-entry',
				'counter-entry',
			] as const),
		),
		date: fc.integer({ min: 1, max: 28 }),
		amount: fc.integer({ min: 1, max: 60 }),
		of: fc.integer({ min: 1, max: 9 }),
		keepRest: fc.boolean(),
	}),
	{ minLength: 6, maxLength: 22, size: 'max' },
)

/** The n-th entry as it was drawn; `of` names one of the invoices or entries so far, or none. */
function entryOf({ is, date, amount, of }: Draw, n: number, before: Ledger): Entry {
	const on = `11-${String(date).padStart(2, '0')}`
	const target = before[of % (before.length + 1)]
	const invoices = before.flatMap((each) => (each.is === 'invoice' ? [Number(each.number.slice(5))] : []))
	const named = invoices[of % (invoices.length + 1)] ?? 99
	const entries: Record<Entry['is'], Entry> = {
		invoice: invoiced(n, on, '12-20', amount),
		'credit note': credited(n, on, named, amount),
		payment: paid(n, on, amount, of % 2 === 0 ? null : named),
		refund: refunded(n, on, Math.ceil(amount / 12)),
		'write-off': writtenOff(n, on, named, amount),
		'counter-entry': { ...undoing(n, on, 99), ...(target && { of: target.id }) },
	}
	return entries[is]
}

const seen = new Set<string>()

/** What was let in, in order. */
function ledgerOf(drawn: readonly Draw[]): Ledger {
	const ledger: Entry[] = []
	for (const [n, each] of drawn.entries()) {
		const entry = entryOf(each, n + 1, ledger)
		const entered = enter(ledger, entry, { today, keepRest: each.keepRest })
		seen.add(entered.ok ? entry.is : entered.why)
		if (entered.ok) ledger.push(entry)
	}
	return ledger
}

const openIn = (ledger: Ledger) =>
	new Map(accountOf(ledger).invoices.map(({ number, openCents }) => [number, openCents]))

test('after every entry the account is that of the box of coins, nothing below zero, and it balances', () => {
	fc.assert(
		fc.property(draws, (drawn) => {
			const whole = ledgerOf(drawn)
			for (let length = 0; length <= whole.length; length += 1) {
				const ledger = whole.slice(0, length)
				const { invoices, openCents, creditCents } = accountOf(ledger)
				const coins = naive(ledger)
				expect(openIn(ledger)).toEqual(coins.open)
				expect(creditCents).toBe(coins.credit)
				expect(balanceOf(ledger)).toBe(coins.balance)
				expect(balanceOf(ledger)).toBe(openCents - creditCents)
				expect(creditCents).toBeGreaterThanOrEqual(0)
				for (const each of invoices) {
					expect(each.openCents).toBeGreaterThanOrEqual(0)
					expect(each.leftCents).toBe(each.paidCents + each.openCents)
					expect(each.leftCents).toBeLessThanOrEqual(each.cents)
				}
				// What is open is not kept as credit beside it.
				if (creditCents > 0) expect(openCents).toBe(0)
			}
		}),
		runs,
	)
	expect([...seen].toSorted()).toEqual([
		...['corrected by a credit note', 'counter-entry', 'credit note', 'given back since', 'invoice'],
		...['more than is due', 'more than is left of the invoice', 'more than is open', 'more than the invoice has open'],
		...['more than their credit', 'no such entry', 'no such invoice', 'payment', 'refund', 'undoes nothing by itself'],
		...['undone already', 'write-off'],
	])
})

test('undoing an entry leaves the account as if it had never been written', () => {
	let count = 0
	fc.assert(
		fc.property(draws, (drawn) => {
			const ledger = ledgerOf(drawn)
			for (const [at, entry] of ledger.entries()) {
				const counter = { ...undoing(99, '12-01', 1), of: entry.id }
				if (counter.is !== 'counter-entry' || !enter(ledger, counter, { today, keepRest: false }).ok) continue
				count += 1
				const without = ledger.toSpliced(at, 1)
				expect(accountOf([...ledger, counter])).toEqual(accountOf(without))
				expect(balanceOf([...ledger, counter])).toBe(balanceOf(without))
				expect(enter([...ledger, counter], { ...counter, id: entryId(98) }, { today, keepRest: false })).toEqual({
					...{ ok: false, why: 'undone already' },
				})
			}
		}),
		runs,
	)
	expect(count).toBeGreaterThan(100)
})

test('where a client stands follows from the entries, in whatever order they were written', () => {
	const shuffled = draws
		.map(ledgerOf)
		.chain((ledger) =>
			fc.tuple(
				fc.constant(ledger),
				fc.shuffledSubarray([...ledger], { minLength: ledger.length, maxLength: ledger.length }),
			),
		)
	fc.assert(
		fc.property(shuffled, ([ledger, other]) => {
			expect(accountOf(other)).toEqual(accountOf(ledger))
			expect(balanceOf(other)).toBe(balanceOf(ledger))
		}),
		runs,
	)
})
