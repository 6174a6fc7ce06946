import { cents } from '../../units/cents'
import type { Ledger } from '../ledger/entry'
import { entryInWords } from '../words/entry'
import { type Cell, csv } from './csv'
import type { Statement } from './statement'

const header = ['Day', 'What', 'Charged', 'Paid or credited', 'Balance']

/** A statement as a table: the balance before, each entry, so that every balance is the one above it and the row's amount. */
export function statementCsv(of: Statement, ledger: Ledger): string {
	const before: Cell[] = [of.from, 'Balance before', '', '', { cents: of.openingCents }]
	const rows = of.rows.map(({ entry, cents: amount, balanceCents }): Cell[] => [
		entry.on,
		entryInWords(entry, ledger),
		amount < 0 ? '' : { cents: amount },
		amount < 0 ? { cents: cents(-amount) } : '',
		{ cents: balanceCents },
	])
	const after: Cell[] = [of.to, 'Balance after', '', '', { cents: of.closingCents }]
	return csv(header, [before, ...rows, after])
}
