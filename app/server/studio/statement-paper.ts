import 'server-only'
import type { AccountPage } from '@/db/money/read-account'
import { yearSpan } from '@/lib/money/statement/year'
import { pdfFile } from '../pdf/pdf-file'
import { statementPdf } from '../pdf/statement'

/** A statement as a file to print and to keep. */
export async function statementPaper(page: AccountPage, year: number): Promise<Response> {
	return pdfFile(new Uint8Array(await statementPdf(page, yearSpan(year))), `statement-${year}`)
}
