import { formFields, refuse, seeOther } from '@/app/server/respond'
import { viewer } from '@/app/server/sign-in/session'
import { endOwnSession } from '@/db/sign-in/own-sessions'

/** Ends one of one's own sessions, by what stands for it on the page. */
export async function POST(request: Request): Promise<Response> {
	const who = await viewer()
	if (who.is === 'nobody') return seeOther('/sign-in')
	const handle = (await formFields(request))?.session
	const ended = await endOwnSession(who, typeof handle === 'string' ? handle : '')
	return ended.ok ? seeOther('/devices?ended') : refuse(request, ended.why, who)
}
