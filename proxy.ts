import { randomBytes } from 'node:crypto'
import { type NextRequest, NextResponse } from 'next/server'
import { plainPage } from './app/server/edge/plain-page'
import { hasPolicyOfItsOwn, policy } from './app/server/edge/policy'
import { screen } from './app/server/edge/screen'
import { log } from './app/server/start/log'

/** Screens every request before a page sees it, and gives every page its policy. Who may do what is decided in `db/`. */
export async function proxy(request: NextRequest): Promise<Response> {
	const { method, headers, nextUrl } = request
	const nonce = randomBytes(16).toString('base64')
	const csp = policy(nonce)
	const refused = await screen(method, nextUrl.pathname, headers)
	log().info({ act: 'request', method, path: nextUrl.pathname, ...(refused && { status: refused.status }) })
	if (refused !== undefined) return plainPage(refused, nonce)
	const passed = new Headers(headers)
	passed.set('x-nonce', nonce)
	passed.set('content-security-policy', csp)
	const response = NextResponse.next({ request: { headers: passed } })
	if (!hasPolicyOfItsOwn(nextUrl.pathname)) response.headers.set('content-security-policy', csp)
	return response
}

export const config = { matcher: ['/((?!_next/static/|icon\\.svg$).*)'] }
