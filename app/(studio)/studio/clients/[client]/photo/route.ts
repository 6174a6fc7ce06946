import { lookAtPhoto } from '@/app/server/picture/photo'
import { json, refuse } from '@/app/server/respond'
import { viewer } from '@/app/server/sign-in/session'
import { clientPage } from '@/db/clients/read-clients'
import { nameOf } from '@/lib/colour/name-of'
import { photoForm } from '@/lib/forms/pictures/photo-form'
import { id, isId } from '@/lib/units/id'

async function fieldsOf(request: Request): Promise<unknown> {
	try {
		return Object.fromEntries(await request.formData())
	} catch {
		return undefined
	}
}

/** The colours of a photo of the client's front; it is looked at and forgotten. */
export async function POST(
	request: Request,
	{ params }: RouteContext<'/studio/clients/[client]/photo'>,
): Promise<Response> {
	const { client } = await params
	const who = await viewer()
	if (who.is === 'nobody') return json({ signedOut: true }, 401)
	if (!isId(client) || (await clientPage(who, id<'client'>(client))) === undefined)
		return refuse(request, 'hidden', who)
	const body = photoForm.safeParse(await fieldsOf(request))
	if (!body.success) return json({ says: 'Choose a photo first.' }, 422)
	const { photo, whiteAt } = body.data
	const looked = await lookAtPhoto(new Uint8Array(await photo.arrayBuffer()), whiteAt)
	if (!looked.ok) return json({ says: looked.says }, 422)
	return json({ ...looked, colours: looked.colours.map((colour) => ({ ...colour, name: nameOf(colour.hex) })) })
}
