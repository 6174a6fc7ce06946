import { paperOf } from '@/app/documents/pdf/paper'
import { isOpened } from '@/app/server/pages'
import { agreementPdf } from '@/app/server/pdf/agreement'
import { pdfFile } from '@/app/server/pdf/pdf-file'
import { refuse, seeOther } from '@/app/server/respond'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { readPaper } from '@/db/agreements/papers/read'
import { markOpened } from '@/db/agreements/signing/open'
import { hashSchema } from '@/lib/agreement/document/document'
import { id, isId } from '@/lib/units/id'

type Context = RouteContext<'/agreement/[agreement]/pdf'>

/** Signed: the kept file, byte for byte, of the latest or of an earlier one that is named. Before: a copy to read, which counts as having opened it so. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
	const { agreement: text } = await params
	const who = await viewer()
	if (!isId(text)) return refuse(request, 'hidden', who)
	const agreement = id<'agreement'>(text)
	const named = hashSchema.nullable().safeParse(new URL(request.url).searchParams.get('document'))
	if (!named.success) return refuse(request, 'hidden', who)
	const paper = await readPaper(who, { agreement, document: named.data }, stamp())
	if (!paper.ok)
		return paper.why === 'being made' ? seeOther(`/agreement/${agreement}`) : refuse(request, paper.why, who)
	if (paper.is === 'kept') return pdfFile(paper.bytes, 'agreement-signed')
	const { document, issuedAt: at, timeZone, lengths } = paper
	const bytes = await agreementPdf({ document, signed: null, at, timeZone, paper: paperOf(lengths) })
	if (await isOpened()) await markOpened(who, { agreement, as: 'PDF' }, stamp())
	return pdfFile(new Uint8Array(bytes), 'agreement-to-read')
}
