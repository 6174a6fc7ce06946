import { moneyFormat } from '@/lib/format/money'
import type { Ledger } from '@/lib/money/ledger/entry'
import type { Statement } from '@/lib/money/statement/statement'
import { statementView as inWords } from '@/lib/money/words/statement'
import { cents } from '@/lib/units/cents'
import type { Drawing } from '../drawing'
import type { Paper } from '../paper'

/** An account as it stands, from day to day. */
export type StatementPaper = {
	readonly studio: string
	readonly client: string
	readonly currency: string
	readonly statement: Statement
	readonly ledger: Ledger
	readonly paper: Paper
}

const yearOf = (day: string) => day.slice(0, 4)

/** "Statement of 2026", of several years "Statement of 2017 to 2026". */
function titleOf({ from, to }: Statement): string {
	const [first, last] = [yearOf(from), yearOf(to)]
	return `Statement of ${first === last ? first : `${first} to ${last}`}`
}

/** Every word and figure of the file, in letters that can be drawn. */
export function statementView({ studio, client, currency, statement, ledger }: StatementPaper, { say }: Drawing) {
	const money = moneyFormat(currency)
	const { opening, lines, closing } = inWords(statement, ledger, money)
	return {
		...{ title: titleOf(statement), from: say(studio), to: say(client), opening, closing },
		lines: lines.map((each) => ({ ...each, words: say(each.words) })),
		sums: {
			charged: money(statement.addedCents),
			paid: money(cents(-statement.takenOffCents)),
			balance: money(statement.closingCents),
		},
	}
}
export type StatementSheet = ReturnType<typeof statementView>
