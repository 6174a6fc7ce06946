import 'server-only'
import type { NextRequest } from 'next/server'
import { endSession } from '@/db/sign-in/session'
import { localPath } from '@/lib/forms/local-path'
import { seeOther } from '../respond'
import { log } from '../start/log'
import { handBack } from './auth'
import { arrivalOf } from './browser'
import { askCookie, browserCookie, forget, remember, sessionCookie } from './cookies'
import { sessionToken } from './session'

/** Uses a link up: a new session for its holder, the one that this browser had before ended. */
export async function signIn(request: NextRequest, by: 'link' | 'code'): Promise<Response> {
	const before = await sessionToken()
	const arrival = await arrivalOf(request.headers, by)
	const answer = await handBack(request, ['callback', 'email'], arrival)
	const given = answer.headers.getSetCookie()
	// The library leads to its own page of errors, or not at all: only a session that it gave says that somebody is in.
	const isIn = given.some((cookie) => cookie.startsWith(`${sessionCookie().name}=`) && !cookie.includes('Max-Age=0'))
	log().info({ act: isIn ? 'signed in' : 'link refused' })
	if (!isIn) return seeOther('/sign-in/over')
	if (before !== undefined) await endSession(before)
	const response = seeOther(localPath(request.nextUrl.searchParams.get('callbackUrl')))
	for (const cookie of given) response.headers.append('set-cookie', cookie)
	await forget(askCookie())
	await remember(browserCookie(), arrival.browser)
	return response
}
