import { refuse } from '@/app/server/respond'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { yearIn } from '@/app/server/studio/statement-file'
import { statementPaper } from '@/app/server/studio/statement-paper'
import { readAccount } from '@/db/money/read-account'
import { id, isId } from '@/lib/units/id'

/** The statement of a year as a file to print and to keep. */
export async function GET(request: Request, { params }: RouteContext<'/studio/money/[client]/pdf'>): Promise<Response> {
	const { client } = await params
	const who = await viewer()
	if (!isId(client)) return refuse(request, 'hidden', who)
	if (who.is !== 'staff') return refuse(request, 'hidden', who)
	const page = await readAccount(who, id<'client'>(client), stamp())
	if (!page.ok) return refuse(request, page.why, who)
	return statementPaper(page, yearIn(page, new URL(request.url).searchParams.get('year')))
}
