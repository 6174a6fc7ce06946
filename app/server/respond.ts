import 'server-only'
import type { Viewer } from '@/lib/access/viewer'
import { type Typed, typed } from '@/lib/forms/read'
import { plainPage } from './edge/plain-page'
import { noteRefusal, type Why } from './refusal'

const noStore = { 'cache-control': 'private, no-store' } as const

/** To the page that shows how it went: what was posted is not posted again by a reload. */
export function seeOther(path: string, headers: Record<string, string> = {}): Response {
	return new Response(null, { status: 303, headers: { location: path, ...noStore, ...headers } })
}

export const json = (value: unknown, status = 200): Response => Response.json(value, { status, headers: noStore })

const says = {
	hidden: { status: 404, title: 'Not found', says: 'There is nothing here, or nothing that you may see.' },
	forbidden: {
		status: 403,
		title: 'Not yours to do',
		says: 'You may look at this, but not do it. Nothing was changed.',
	},
} as const

/** The same 404 for what is not there and for what is not yours; 403 for what you may only look at. */
export function refuse(request: Request, why: Why, who?: Viewer): Response {
	noteRefusal(why, who)
	return plainPage(says[why], request.headers.get('x-nonce') ?? '')
}

export function unclear(request: Request, what: string): Response {
	return plainPage({ status: 400, says: what }, request.headers.get('x-nonce') ?? '')
}

/** The fields of a form that was posted; undefined when it cannot be read as one. */
export async function formFields(request: Request, many: readonly string[] = []): Promise<Typed | undefined> {
	try {
		return typed(await request.formData(), many)
	} catch {
		return undefined
	}
}

export async function jsonBody(request: Request): Promise<unknown> {
	try {
		return await request.json()
	} catch {
		return undefined
	}
}
