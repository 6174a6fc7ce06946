import { refuse } from '@/app/server/respond'
import { viewer } from '@/app/server/sign-in/session'
import { photoFile } from '@/db/clients/visits/photos/photo-file'
import { id, isId } from '@/lib/units/id'
import { isPhotoSize } from '@/lib/visit/photo'

/** A photo for those who may see what it belongs to; it never changes under its address. */
export async function GET(request: Request, { params }: RouteContext<'/photo/[photo]/[size]'>): Promise<Response> {
	const { photo, size: name } = await params
	const size = name.replace(/\.jpg$/, '')
	if (!isId(photo) || !name.endsWith('.jpg') || !isPhotoSize(size)) return refuse(request, 'hidden')
	const who = await viewer()
	const bytes = await photoFile(who, id<'photo'>(photo), size)
	if (bytes === undefined) return refuse(request, 'hidden', who)
	return new Response(bytes, {
		headers: {
			'content-type': 'image/jpeg',
			'content-length': String(bytes.length),
			'cache-control': 'private, max-age=31536000, immutable',
			'content-security-policy': "default-src 'none'",
			'x-content-type-options': 'nosniff',
		},
	})
}
