import { tooMany } from '@/app/server/edge/limits'
import { senderOf } from '@/app/server/edge/screen'
import { coverPng } from '@/app/server/picture/cover/cover-png'
import { notDrawn } from '@/app/server/picture/drawn'
import { viewer } from '@/app/server/sign-in/session'
import { readCover } from '@/db/proposals/pictures/read-cover'
import { coverKeyIn } from '@/lib/forms/pictures/cover-address'

/** The picture that a link shows before anybody signs in, at an address that cannot be guessed. */
export async function GET(request: Request, { params }: RouteContext<'/cover/[picture]'>): Promise<Response> {
	const wait = await tooMany('covers of one sender', senderOf(request.headers))
	if (wait !== undefined) return new Response('', { status: 429, headers: { 'retry-after': String(wait) } })
	const key = coverKeyIn((await params).picture)
	const cover = key === undefined ? undefined : await readCover(await viewer(), key)
	if (cover === undefined) return notDrawn(request)
	return new Response(new Uint8Array(await coverPng(cover)), {
		headers: {
			'content-type': 'image/png',
			'cache-control': 'public, max-age=3600',
			'content-security-policy': "default-src 'none'",
		},
	})
}
