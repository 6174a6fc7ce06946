import 'server-only'
import { forbidden, notFound } from 'next/navigation'
import { actorOf } from '@/db/viewer'
import type { Viewer } from '@/lib/access/viewer'
import { log } from './start/log'

export type Why = 'hidden' | 'forbidden'

/** Who was not let through, and why; never what was sent, nor where to by query. */
export function noteRefusal(why: Why, who: Viewer | undefined): void {
	log().warn({ act: 'refused', why, who: who === undefined ? 'unknown' : actorOf(who) })
}

/** The page is not there for them: a 404, noted. */
export function hide(who: Viewer): never {
	noteRefusal('hidden', who)
	notFound()
}

/** They may see it but not do it: a 403, noted. */
export function forbid(who: Viewer): never {
	noteRefusal('forbidden', who)
	forbidden()
}
