import { json } from '@/app/server/respond'
import { onDesk } from '@/app/server/studio/on-desk'
import { findStandIns } from '@/db/proposals/desk/stand-ins'
import { standInsBody } from '@/lib/forms/draft-form'

/** What can stand in for one material of what is on the desk, the best first; stores nothing. */
export async function POST(
	request: Request,
	{ params }: RouteContext<'/studio/proposal/[proposal]/substitutes'>,
): Promise<Response> {
	return onDesk(request, (await params).proposal, standInsBody, async (who, proposal, body, stamp) => {
		const found = await findStandIns(who, { proposal, ...body }, stamp)
		return found && json({ substitutes: found })
	})
}
