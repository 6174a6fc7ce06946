import 'server-only'
import { cookies } from 'next/headers'
import { cache } from 'react'
import { personOfSession } from '@/db/sign-in/session'
import { viewerOf } from '@/db/viewer'
import type { Viewer } from '@/lib/access/viewer'
import { now } from '../start/clock'
import { sessionCookie } from './cookies'

export async function sessionToken(): Promise<string | undefined> {
	return (await cookies()).get(sessionCookie().name)?.value
}

/** Who is asking, looked up afresh for each request and once in it. */
export const viewer = cache(async (): Promise<Viewer> => {
	const token = await sessionToken()
	const person = token === undefined ? undefined : await personOfSession(token, now())
	return viewerOf(person ?? 'nobody')
})
