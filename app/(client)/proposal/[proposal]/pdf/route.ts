import { approvedPaper } from '@/app/server/answers/approved-paper'
import { pdfFile } from '@/app/server/pdf/pdf-file'
import { proposalPdf } from '@/app/server/pdf/proposal'
import { refuse, seeOther } from '@/app/server/respond'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { readOffer } from '@/db/proposals/read-offer'
import { id, isId } from '@/lib/units/id'

/** What was approved as a file, drawn from the frozen revision and its answer; else how the proposal stands. */
export async function GET(request: Request, { params }: RouteContext<'/proposal/[proposal]/pdf'>): Promise<Response> {
	const { proposal } = await params
	const who = await viewer()
	if (!isId(proposal)) return refuse(request, 'hidden', who)
	const page = await readOffer(who, id<'proposal'>(proposal), stamp())
	if (page === undefined) return refuse(request, 'hidden', who)
	const paper = approvedPaper(page)
	if (paper === undefined) return seeOther(`/proposal/${proposal}`)
	return pdfFile(new Uint8Array(await proposalPdf(paper)), `design-${paper.approval.reference}`)
}
