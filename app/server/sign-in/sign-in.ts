import 'server-only'
import type { NextRequest } from 'next/server'
import { endSession } from '@/db/sign-in/session'
import { localPath } from '@/lib/forms/local-path'
import { seeOther } from '../respond'
import { log } from '../start/log'
import { handBack } from './auth'
import { askCookie, forget } from './cookies'
import { sessionToken } from './session'

/** Uses a link up: a new session for its holder, the one that this browser had before ended. */
export async function signIn(request: NextRequest): Promise<Response> {
	const before = await sessionToken()
	const answer = await handBack(request, ['callback', 'email'])
	const isIn = !(answer.headers.get('location') ?? '').includes('/sign-in/over')
	log().info({ act: isIn ? 'signed in' : 'link refused' })
	if (!isIn) return seeOther('/sign-in/over')
	if (before !== undefined) await endSession(before)
	const response = seeOther(localPath(request.nextUrl.searchParams.get('callbackUrl')))
	for (const cookie of answer.headers.getSetCookie()) response.headers.append('set-cookie', cookie)
	await forget(askCookie())
	return response
}
