import { StatementPdf } from '@/app/documents/pdf/money/statement-pdf'
import { paperOf } from '@/app/documents/pdf/paper'
import type { AccountPage } from '@/db/money/read-account'
import { type Span, statement } from '@/lib/money/statement/statement'
import { drawnPdf } from './drawn-pdf'

type Of = Pick<AccountPage, 'studio' | 'client' | 'currency' | 'ledger' | 'lengths'>

/** The bytes of a statement's file. */
export function statementPdf({ studio, client, currency, ledger, lengths }: Of, span: Span): Promise<Buffer> {
	const whose = { studio, client: client.name, currency, ledger, paper: paperOf(lengths) }
	const input = { ...whose, statement: statement(ledger, span) }
	return drawnPdf((drawing) => StatementPdf({ input, drawing }))
}
