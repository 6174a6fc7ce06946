import { drawn, notDrawn } from '@/app/server/picture/drawn'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { readPicture } from '@/db/proposals/pictures/read-picture'
import { readPictureQuery } from '@/lib/forms/pictures/picture-address'
import { id, isId } from '@/lib/units/id'

const named = /^([0-9a-f]{16})\.svg$/

/** A picture of what stands, addressed by its revision: it never changes, and only those who may see the design get it. */
export async function GET(
	request: Request,
	{ params }: RouteContext<'/proposal/[proposal]/picture/[revision]'>,
): Promise<Response> {
	const { proposal, revision: name } = await params
	const ask = readPictureQuery(new URL(request.url).searchParams)
	const [, revision = ''] = named.exec(name) ?? []
	if (ask === undefined || revision === '' || !isId(proposal)) return notDrawn(request)
	const { cut, ...shown } = ask
	const asked = { proposal: id<'proposal'>(proposal), revision, shown, isOfWhatStands: cut === 'thumbnail' }
	const who = await viewer()
	const scene = await readPicture(who, asked, stamp())
	return scene === undefined ? notDrawn(request, who) : drawn(scene, cut, 'private, max-age=31536000, immutable')
}
