import { capital } from '../../format/words'
import { type Cents, cents } from '../../units/cents'
import type { Bill } from '../bills/bill'
import type { InvoiceNumber } from './number'
import type { DocumentLine } from './parts'

/** What the lines of an invoice say beside its bill. */
export type Telling = {
	/** "Winter 2026–27", "Service agreement 2027" */
	readonly about: string
	/** Everything that was approved and is asked for apart, tax not in it. */
	readonly rows: readonly { readonly label: string; readonly cents: Cents }[]
	/** The invoice of the deposit, and what it asked for before tax; null of one that was asked for elsewhere. */
	readonly deposit: { readonly number: InvoiceNumber; readonly netCents: Cents } | null
}

const one = (words: string, amount: Cents): DocumentLine => ({ words, count: 1, cents: amount })

const rowLines = ({ rows }: Telling) => rows.map(({ label, cents: amount }) => one(label, amount))

/** Everything in full, less what the deposit asked for already. */
function balanceLines(telling: Telling, net: Cents): DocumentLine[] {
	const { deposit } = telling
	if (deposit === null) return [one(`Balance: ${capital(telling.about)}`, net)]
	return [...rowLines(telling), one(`Less the deposit, invoice ${deposit.number}`, cents(-deposit.netCents))]
}

/** The lines of the invoice of a bill; they sum to what it asks for before tax. */
export function linesOf({ part, charge: { netCents } }: Bill, telling: Telling): DocumentLine[] {
	const about = capital(telling.about)
	switch (part.is) {
		case 'whole':
			return rowLines(telling)
		case 'balance':
			return balanceLines(telling, netCents)
		case 'deposit':
			return [one(`Deposit: ${about}`, netCents)]
		case 'remains':
			return [one(`What remains due: ${about}`, netCents)]
		case 'instalment':
			return [one(`Instalment ${part.nth} of ${part.of}: ${about}`, netCents)]
		default:
			return part satisfies never
	}
}
