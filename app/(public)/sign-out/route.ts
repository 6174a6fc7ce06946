import { seeOther } from '@/app/server/respond'
import { forget, sessionCookie } from '@/app/server/sign-in/cookies'
import { sessionToken } from '@/app/server/sign-in/session'
import { endSession } from '@/db/sign-in/session'

/** Ends the session on the server and empties what the browser kept. */
export async function POST(): Promise<Response> {
	const token = await sessionToken()
	if (token !== undefined) await endSession(token)
	await forget(sessionCookie())
	return seeOther('/sign-in', { 'clear-site-data': '"cache", "storage"' })
}
