import { refuse, seeOther } from '@/app/server/respond'
import { forgetAll } from '@/app/server/sign-in/cookies'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { signOutEverywhere } from '@/db/sign-in/own-sessions'

/** Ends every session of one's own, and empties all that this browser kept. */
export async function POST(request: Request): Promise<Response> {
	const who = await viewer()
	if (who.is === 'nobody') return seeOther('/sign-in')
	const out = await signOutEverywhere(who, stamp())
	if (!out.ok) return refuse(request, out.why, who)
	await forgetAll()
	return seeOther('/sign-in', { 'clear-site-data': '"cache", "storage"' })
}
