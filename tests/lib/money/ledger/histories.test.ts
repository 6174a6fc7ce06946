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
const runs = { numRuns: 400 }

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
			...(['invoice', 'invoice', 'payment', 'payment', 'credit note', 'refund', 'write-off', 'counter-entry'] as const),
		),
		date: fc.integer({ min: 1, max: 28 }),
		amount: fc.integer({ min: 1, max: 60 }),
		of: fc.integer({ min: 1, max: 12 }),
		keepRest: fc.boolean(),
	}),
	{ maxLength: 18 },
)

/** The n-th entry as it was drawn; `of` names one of the invoices or entries so far, or none. */
function entryOf({ is, date, amount, of }: Draw, n: number): Entry {
	const on = `11-${String(date).padStart(2, '0')}`
	const entries: Record<Entry['is'], Entry> = {
		invoice: invoiced(n, on, '12-20', amount),
		'credit note': credited(n, on, of, amount),
		payment: paid(n, on, amount, of % 2 === 0 ? null : of),
		refund: refunded(n, on, amount),
		'write-off': writtenOff(n, on, of, amount),
		'counter-entry': undoing(n, on, of),
	}
	return entries[is]
}

const kinds = new Set<string>()

/** What was let in, in order. */
function ledgerOf(drawn: readonly Draw[]): Ledger {
	const ledger: Entry[] = []
	for (const [n, each] of drawn.entries()) {
		const entry = entryOf(each, n + 1)
		if (!enter(ledger, entry, { today, keepRest: each.keepRest }).ok) continue
		kinds.add(entry.is)
		ledger.push(entry)
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
	expect(kinds.size).toBe(6)
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
