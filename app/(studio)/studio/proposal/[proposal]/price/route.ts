import { json } from '@/app/server/respond'
import { onDesk } from '@/app/server/studio/on-desk'
import { priceDraft } from '@/db/proposals/desk/price-draft'
import { priceBody } from '@/lib/forms/draft-form'

/** Prices, checks and draws what is on the desk and stores nothing; the next keystroke aborts it. */
export async function POST(
	request: Request,
	{ params }: RouteContext<'/studio/proposal/[proposal]/price'>,
): Promise<Response> {
	return onDesk(request, (await params).proposal, priceBody, async (who, proposal, { draft, measured }, stamp) => {
		const desk = await priceDraft(who, { proposal, draft, measured }, stamp)
		return desk && json(desk)
	})
}
