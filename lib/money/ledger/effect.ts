import { type Cents, cents, sum } from '../../units/cents'
import type { CounterEntry, Entry, Ledger, Moving } from './entry'

/** What an entry adds to what the client owes; below zero where it takes off. */
function moved(entry: Moving): Cents {
	switch (entry.is) {
		case 'invoice':
		case 'refund':
			return entry.cents
		case 'credit note':
		case 'payment':
		case 'write-off':
			return cents(-entry.cents)
		default:
			return entry satisfies never
	}
}

const isMoving = (entry: Entry): entry is Moving => entry.is !== 'counter-entry'

/** The entry that `counter` undoes. @throws when the ledger has none */
export function undone(ledger: Ledger, counter: CounterEntry): Moving {
	const found = ledger.filter(isMoving).find(({ id }) => id === counter.of)
	if (found === undefined) throw new Error(`ledger: ${counter.id} undoes an entry that is not there`)
	return found
}

export const effectOf = (entry: Entry, ledger: Ledger): Cents =>
	isMoving(entry) ? moved(entry) : cents(-moved(undone(ledger, entry)))

/** What the client owes in all; below zero where the studio owes them. */
export const balanceOf = (ledger: Ledger): Cents => sum(ledger.map((entry) => effectOf(entry, ledger)))

/** The entries that count: neither undone nor undoing. */
export function standing(ledger: Ledger): readonly Moving[] {
	const out = new Set<string>(ledger.flatMap((entry) => (entry.is === 'counter-entry' ? [entry.of] : [])))
	return ledger.filter(isMoving).filter(({ id }) => !out.has(id))
}
