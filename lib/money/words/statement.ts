import { fullDay } from '../../format/day'
import type { MoneyFormat } from '../../format/money'
import { type Cents, cents } from '../../units/cents'
import type { Ledger } from '../ledger/entry'
import type { Statement } from '../statement/statement'
import { balanceInWords } from './balance'
import { entryInWords } from './entry'

/** Columns of a statement; an amount stands in the one or the other. */
export type StatementLine = {
	readonly key: string
	readonly day: string
	readonly words: string
	readonly charged: string
	readonly paid: string
	readonly balance: string
}

export type StatementView = {
	readonly opening: string
	readonly lines: readonly StatementLine[]
	readonly closing: string
}

/** What was owed on the eve of the first day, each entry, and what is owed after the last, in words and figures. */
export function statementView(of: Statement, ledger: Ledger, money: MoneyFormat): StatementView {
	const sided = (amount: Cents) => (amount < 0 ? '' : money(amount))
	return {
		opening: `Before ${fullDay(of.from)}: ${balanceInWords(of.openingCents, money)}`,
		lines: of.rows.map(({ entry, cents: amount, balanceCents }) => ({
			key: entry.id,
			day: fullDay(entry.on),
			words: entryInWords(entry, ledger),
			charged: sided(amount),
			paid: sided(cents(-amount)),
			balance: money(balanceCents),
		})),
		closing: `At the end: ${balanceInWords(of.closingCents, money)}`,
	}
}
