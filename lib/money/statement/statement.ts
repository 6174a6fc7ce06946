import { type Cents, cents, sum } from '../../units/cents'
import type { Day } from '../../units/day'
import { effectOf } from '../ledger/effect'
import type { Entry, Ledger } from '../ledger/entry'

export type StatementRow = {
	readonly entry: Entry
	/** What it adds to what is owed; below zero where it takes off. */
	readonly cents: Cents
	/** What is owed after it. */
	readonly balanceCents: Cents
}

export type Statement = {
	readonly from: Day
	readonly to: Day
	readonly openingCents: Cents
	readonly rows: readonly StatementRow[]
	/** Sums of the rows that add to what is owed, and of those that take off. */
	readonly addedCents: Cents
	readonly takenOffCents: Cents
	readonly closingCents: Cents
}

export type Span = { readonly from: Day; readonly to: Day }

/** A client's account from day to day, both in it, by date; entries of one day as they were written. */
export function statement(ledger: Ledger, { from, to }: Span): Statement {
	if (to < from) throw new Error(`statement: from ${from} to ${to}`)
	const opening = sum(ledger.filter(({ on }) => on < from).map((entry) => effectOf(entry, ledger)))
	let balance = opening
	const rows = ledger
		.filter(({ on }) => on >= from && on <= to)
		.toSorted((a, b) => a.on.localeCompare(b.on))
		.map((entry) => {
			const effect = effectOf(entry, ledger)
			balance = cents(balance + effect)
			return { entry, cents: effect, balanceCents: balance }
		})
	const moved = rows.map((row) => row.cents)
	return {
		...{ from, to, rows, openingCents: opening, closingCents: balance },
		addedCents: sum(moved.filter((amount) => amount > 0)),
		takenOffCents: sum(moved.filter((amount) => amount < 0)),
	}
}
