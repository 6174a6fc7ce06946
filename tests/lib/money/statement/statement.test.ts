import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { balanceOf } from '@/lib/money/ledger/effect'
import type { Entry } from '@/lib/money/ledger/entry'
import { statement } from '@/lib/money/statement/statement'
import { yearSpan, yearsOf } from '@/lib/money/statement/year'
import { sum } from '@/lib/units/cents'
import { addDays, day } from '@/lib/units/day'
import { credited, invoiced, paid, refunded, undoing } from '../sample'

const ledger = [
	invoiced(1, '10-09', '10-09', 300),
	paid(2, '11-02', 120),
	paid(4, '10-11', 50),
	undoing(5, '12-02', 2),
	{ ...invoiced(6, '11-30', '12-31', 500), on: day('2027-01-01') },
]

describe('a statement', () => {
	test('of a year: by date, each with the balance after it', () => {
		const of = statement(ledger, yearSpan(2026))
		expect(of.rows.map(({ entry, cents, balanceCents }) => [entry.on, entry.is, cents, balanceCents])).toEqual([
			['2026-10-09', 'invoice', 300, 300],
			['2026-10-11', 'payment', -50, 250],
			['2026-11-02', 'payment', -120, 130],
			['2026-12-02', 'counter-entry', 120, 250],
		])
		expect([of.openingCents, of.addedCents, of.takenOffCents, of.closingCents]).toEqual([0, 420, -170, 250])
	})

	test('begins with what was owed before, the first and the last day in it', () => {
		const of = statement(ledger, { from: day('2026-10-10'), to: day('2026-11-02') })
		expect([of.openingCents, of.rows.length, of.closingCents]).toEqual([300, 2, 130])
		expect(statement(ledger, yearSpan(2027)).openingCents).toBe(250)
	})

	test('of a year in which nothing happened', () => {
		expect(statement(ledger, yearSpan(2028))).toMatchObject({ openingCents: 750, rows: [], closingCents: 750 })
	})

	test('days reversed are a broken promise', () => {
		expect(() => statement(ledger, { from: day('2026-11-02'), to: day('2026-11-01') })).toThrow('from 2026-11-02')
	})

	test('there is one for each year since the first entry', () => {
		expect(yearsOf([day('2024-12-31'), day('2026-01-01')], day('2027-06-01'))).toEqual([2024, 2025, 2026, 2027])
		expect(yearsOf([], day('2027-06-01'))).toEqual([2027])
	})
})

describe('laws of statements', () => {
	const begin = day('2023-06-01')
	const made = fc.tuple(fc.constantFrom('invoice', 'payment', 'credit', 'refund', 'undo'), fc.nat(1600), fc.nat(9000))
	const ledgers = fc.array(made, { maxLength: 25 }).map((drawn) =>
		drawn.flatMap(([is, after, amount], n): Entry[] => {
			const of = {
				invoice: invoiced(n + 1, '01-01', '01-01', amount + 1),
				payment: paid(n + 1, '01-01', amount + 1),
				credit: credited(n + 1, '01-01', 1, amount + 1),
				refund: refunded(n + 1, '01-01', amount + 1),
				undo: undoing(n + 1, '01-01', 1),
			}[is]
			const isFirst = n === 0 && is === 'undo'
			const [first] = drawn
			return isFirst || (is === 'undo' && first?.[0] === 'undo') ? [] : [{ ...of, on: addDays(begin, after) }]
		}),
	)

	test('the closing of a year is the opening of the next, and the last closing is the balance', () => {
		fc.assert(
			fc.property(ledgers, (of) => {
				const years = yearsOf(
					of.map(({ on }) => on),
					day('2027-12-31'),
				)
				let carried = 0
				for (const year of years) {
					const { openingCents, rows, addedCents, takenOffCents, closingCents } = statement(of, yearSpan(year))
					expect(openingCents).toBe(carried)
					expect(closingCents).toBe(openingCents + sum(rows.map(({ cents }) => cents)))
					expect(closingCents).toBe(openingCents + addedCents + takenOffCents)
					let running: number = openingCents
					for (const row of rows) {
						running += row.cents
						expect(row.balanceCents).toBe(running)
					}
					expect(rows.map(({ entry }) => entry.on)).toEqual(rows.map(({ entry }) => entry.on).toSorted())
					carried = closingCents
				}
				expect(carried).toBe(balanceOf(of))
				const told = years.flatMap((year) => statement(of, yearSpan(year)).rows)
				expect(told.length).toBe(of.length)
			}),
			{ numRuns: 300 },
		)
	})
})
