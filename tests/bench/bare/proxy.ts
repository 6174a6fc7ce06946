import { randomBytes } from 'node:crypto'
import { type NextRequest, NextResponse } from 'next/server'

/** The least that gives a page a policy with a nonce: what every page of the site pays before it does anything. */
export function proxy(request: NextRequest): Response {
	const policy = `default-src 'self'; script-src 'nonce-${randomBytes(16).toString('base64')}' 'strict-dynamic'`
	const headers = new Headers(request.headers)
	headers.set('content-security-policy', policy)
	const response = NextResponse.next({ request: { headers } })
	response.headers.set('content-security-policy', policy)
	return response
}

export const config = { matcher: ['/guarded'] }
