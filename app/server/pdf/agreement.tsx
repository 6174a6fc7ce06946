import { renderToBuffer } from '@react-pdf/renderer'
import { AgreementPdf } from '@/app/documents/pdf/agreement/agreement-pdf'
import type { AgreementPaper } from '@/app/documents/pdf/agreement/input'
import { drawing } from '@/app/documents/pdf/drawing'
import { letters } from './letters'
import { oneByOne } from './one-by-one'

/** The bytes of an agreement's file, not sealed yet; the same for the same input. */
export const agreementPdf = (input: AgreementPaper): Promise<Buffer> =>
	oneByOne(async () => renderToBuffer(AgreementPdf({ input, drawing: drawing(await letters()) })))
