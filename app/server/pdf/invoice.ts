import { InvoicePdf } from '@/app/documents/pdf/money/invoice-pdf'
import type { InvoicePaper } from '@/app/documents/pdf/money/invoice-view'
import { drawnPdf } from './drawn-pdf'

/** The bytes of an invoice's file. */
export const invoicePdf = (input: InvoicePaper): Promise<Buffer> =>
	drawnPdf((drawing) => InvoicePdf({ input, drawing }))
