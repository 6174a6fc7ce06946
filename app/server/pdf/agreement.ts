import { AgreementPdf } from '@/app/documents/pdf/agreement/agreement-pdf'
import type { AgreementPaper } from '@/app/documents/pdf/agreement/input'
import { drawnPdf } from './drawn-pdf'

/** The bytes of an agreement's file, not sealed yet. */
export const agreementPdf = (input: AgreementPaper): Promise<Buffer> =>
	drawnPdf((drawing) => AgreementPdf({ input, drawing }))
