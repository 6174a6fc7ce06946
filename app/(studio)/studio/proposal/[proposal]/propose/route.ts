import { json } from '@/app/server/respond'
import { onDesk } from '@/app/server/studio/on-desk'
import { proposeOptions } from '@/db/proposals/desk/design-draft'
import { optionText, proposeBody } from '@/lib/forms/draft-form'

/** Palettes for the wall from what is on the desk; stores nothing. */
export async function POST(
	request: Request,
	{ params }: RouteContext<'/studio/proposal/[proposal]/propose'>,
): Promise<Response> {
	return onDesk(request, (await params).proposal, proposeBody, async (who, proposal, { draft }, stamp) => {
		const made = await proposeOptions(who, { proposal, draft }, stamp)
		return made && json({ options: made.options.map(optionText), short: made.short })
	})
}
