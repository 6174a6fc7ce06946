import { renderToBuffer } from '@react-pdf/renderer'
import { type Drawing, drawing } from '@/app/documents/pdf/drawing'
import { letters } from './letters'
import { oneByOne } from './one-by-one'

type Sheets = Parameters<typeof renderToBuffer>[0]

/** The bytes of a file, drawn when it is its turn; the same for the same input. */
export const drawnPdf = (sheets: (of: Drawing) => Sheets | Promise<Sheets>): Promise<Buffer> =>
	oneByOne(async () => renderToBuffer(await sheets(drawing(await letters()))))
