import { drawn, notDrawn } from '@/app/server/picture/drawn'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { previewOffer } from '@/db/proposals/desk/price-draft'
import { readDraft } from '@/db/proposals/draft'
import { readPictureQuery } from '@/lib/forms/pictures/picture-address'
import { sceneOf } from '@/lib/proposal/offer/scene-of'
import { id, isId } from '@/lib/units/id'

/** A picture of the saved draft, as the preview shows it. */
export async function GET(
	request: Request,
	{ params }: RouteContext<'/studio/proposal/[proposal]/preview/picture'>,
): Promise<Response> {
	const { proposal: text } = await params
	const ask = readPictureQuery(new URL(request.url).searchParams)
	if (ask === undefined || !isId(text)) return notDrawn(request)
	const [who, proposal] = [await viewer(), id<'proposal'>(text)]
	const kept = await readDraft(who, proposal, stamp())
	const offer = kept && (await previewOffer(who, { proposal, draft: kept.draft }, stamp()))
	const { cut, ...shown } = ask
	const scene = offer && sceneOf(offer, shown)
	return scene === undefined ? notDrawn(request, who) : drawn(scene, cut, 'private, no-store')
}
