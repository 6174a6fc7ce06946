import { paperOf } from '@/app/documents/pdf/paper'
import { invoicePdf } from '@/app/server/pdf/invoice'
import { pdfFile } from '@/app/server/pdf/pdf-file'
import { refuse } from '@/app/server/respond'
import { viewer } from '@/app/server/sign-in/session'
import { readInvoice } from '@/db/money/read-invoice'

/** The invoice as a file, with the credit notes to it: drawn from what is frozen, so the same each time. */
export async function GET(request: Request, { params }: RouteContext<'/invoice/[number]/pdf'>): Promise<Response> {
	const { number } = await params
	const who = await viewer()
	const page = await readInvoice(who, number)
	if (!page.ok) return refuse(request, page.why, who)
	const { invoice, notes, lengths } = page
	const bytes = await invoicePdf({ invoice, notes, paper: paperOf(lengths) })
	return pdfFile(new Uint8Array(bytes), `invoice-${invoice.number}`)
}
