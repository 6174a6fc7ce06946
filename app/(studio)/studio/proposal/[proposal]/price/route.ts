import { json, jsonBody, refuse } from '@/app/server/respond'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { readDraft } from '@/db/proposals/draft'
import { priceDraft } from '@/db/proposals/price-draft'
import { priceBody } from '@/lib/forms/draft-form'
import { read, under } from '@/lib/forms/read'
import { id, isId } from '@/lib/units/id'

/** Prices what is on the desk and stores nothing; the next keystroke aborts it. */
export async function POST(
	request: Request,
	{ params }: RouteContext<'/studio/proposal/[proposal]/price'>,
): Promise<Response> {
	const { proposal: text } = await params
	const who = await viewer()
	if (who.is === 'nobody') return json({ signedOut: true }, 401)
	if (!isId(text)) return refuse(request, 'hidden', who)
	const proposal = id<'proposal'>(text)
	if ((await readDraft(who, proposal, stamp())) === undefined) return refuse(request, 'hidden', who)
	const body = read(priceBody, await jsonBody(request))
	if (!body.ok) return json({ errors: under('draft', body.errors) }, 422)
	const desk = await priceDraft(who, { proposal, ...body.value }, stamp())
	return desk === undefined ? refuse(request, 'hidden', who) : json(desk)
}
