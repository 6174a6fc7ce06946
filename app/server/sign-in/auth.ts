import 'server-only'
import type { NextRequest } from 'next/server'
import NextAuth, { type NextAuthOptions } from 'next-auth'
import { sessionAdapter } from '@/db/sign-in/adapter'
import type { Arrival } from '@/db/sign-in/arrival'
import { now } from '../start/clock'
import { env } from '../start/env'
import { sessionCookie } from './cookies'
import { randomToken, secret } from './secrets'

const monthSeconds = 30 * 86_400

/** Database sessions; the only way in is a mailed link or its code. The library sends nothing and shows no page. */
function options(arrival?: Arrival): NextAuthOptions {
	const { name, ...cookie } = sessionCookie()
	return {
		adapter: sessionAdapter(now, arrival),
		secret: secret(),
		useSecureCookies: env().isSecure,
		providers: [
			{
				id: 'email',
				type: 'email',
				name: 'Email',
				server: '',
				from: env().mailFrom,
				maxAge: 600,
				options: {},
				sendVerificationRequest: () => Promise.reject(new Error('Links are sent from the outbox alone.')),
			},
		],
		session: { strategy: 'database', maxAge: monthSeconds, updateAge: monthSeconds, generateSessionToken: randomToken },
		cookies: { sessionToken: { name, options: cookie } },
		pages: { signIn: '/sign-in', error: '/sign-in/over', verifyRequest: '/sign-in/sent' },
	}
}

/** Hands a request to the library, with the browser of whoever may come in by it. It reads its own origin from NEXTAUTH_URL, never from a header. */
export async function handBack(request: NextRequest, path: string[], arrival?: Arrival): Promise<Response> {
	process.env.NEXTAUTH_URL = env().siteUrl
	const answer: unknown = await NextAuth(request, { params: Promise.resolve({ nextauth: path }) }, options(arrival))
	if (!(answer instanceof Response)) throw new Error('handBack: the library gave no response')
	return answer
}
