import { json } from '@/app/server/respond'
import { onDesk } from '@/app/server/studio/on-desk'
import { growOption } from '@/db/proposals/desk/design-draft'
import { growBody, optionText } from '@/lib/forms/draft-form'

const noLines = 'This recipe has no lines yet: write them first, or choose another.'

/** A recipe grown into every container of one option of what is on the desk; stores nothing. */
export async function POST(
	request: Request,
	{ params }: RouteContext<'/studio/proposal/[proposal]/grow'>,
): Promise<Response> {
	return onDesk(request, (await params).proposal, growBody, async (who, proposal, body, stamp) => {
		const option = await growOption(who, { proposal, ...body }, stamp)
		if (option === 'no lines') return json({ errors: { recipe: noLines } }, 422)
		return option && json({ option: optionText(option) })
	})
}
