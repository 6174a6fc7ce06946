import 'server-only'
import type { AccountPage } from '@/db/money/read-account'
import { statement } from '@/lib/money/statement/statement'
import { statementCsv } from '@/lib/money/statement/statement-csv'
import { yearSpan } from '@/lib/money/statement/year'

/** The year that an address asks for, if the account has one; else the latest. */
export function yearIn(page: Pick<AccountPage, 'years' | 'today'>, text: string | null | undefined): number {
	const found = page.years.find((year) => String(year) === text)
	return found ?? page.years[0] ?? Number(page.today.slice(0, 4))
}

/** A statement as a file that a table program opens. */
export function statementFile(page: AccountPage, year: number): Response {
	const body = statementCsv(statement(page.ledger, yearSpan(year)), page.ledger)
	return new Response(body, {
		headers: {
			'content-type': 'text/csv; charset=utf-8',
			'content-disposition': `attachment; filename="statement-${year}.csv"`,
			'cache-control': 'private, no-store',
			'x-content-type-options': 'nosniff',
		},
	})
}
