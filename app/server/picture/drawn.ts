import 'server-only'
import type { Viewer } from '@/lib/access/viewer'
import { type Cut, cuts } from '@/lib/forms/pictures/picture-address'
import { picture } from '@/lib/picture/picture'
import type { Scene } from '@/lib/picture/scene'
import { refuse } from '../respond'

/** A picture as a response of its own, in which nothing can run. */
export function drawn(scene: Scene, cut: Cut, keep: string): Response {
	return new Response(picture(scene, cuts[cut]), {
		headers: {
			'content-type': 'image/svg+xml; charset=utf-8',
			'cache-control': keep,
			'content-security-policy': "default-src 'none'",
		},
	})
}

/** To whoever may not see it there is no such picture. */
export const notDrawn = (request: Request, who?: Viewer): Response => refuse(request, 'hidden', who)
