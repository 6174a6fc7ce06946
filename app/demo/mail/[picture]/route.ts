import { keptPicture } from '@/app/server/mail/kept-mails'
import { notDrawn } from '@/app/server/picture/drawn'
import { env } from '@/app/server/start/env'

/** In a demo only: a picture of a mail that went to a file. */
export async function GET(request: Request, { params }: RouteContext<'/demo/mail/[picture]'>): Promise<Response> {
	const { picture } = await params
	if (!env().isDemo || env().smtpUrl !== undefined) return notDrawn(request)
	const kept = keptPicture(picture)
	if (kept === undefined) return notDrawn(request)
	return new Response(new Uint8Array(kept), {
		headers: {
			'content-type': picture.endsWith('.png') ? 'image/png' : 'image/jpeg',
			'cache-control': 'no-store',
			'content-security-policy': "default-src 'none'",
		},
	})
}
