import { env } from '../start/env'
import { tooMany } from './limits'

/** Why a request is turned away before any page sees it. */
export type Refused = {
	readonly status: 400 | 403 | 405 | 411 | 413 | 415 | 429
	readonly says: string
	readonly retryAfter?: number
}

const forms = new Set(['application/x-www-form-urlencoded', 'multipart/form-data'])
const kilobyte = 1024
const mostBytes = {
	form: 64 * kilobyte,
	draft: 400 * kilobyte,
	report: 16 * kilobyte,
	photo: 15_000 * kilobyte,
	photos: 40_000 * kilobyte,
}
/** Where a form brings one photo, and where it may bring several. */
const photoPath = /^\/studio\/clients\/[^/]+\/(?:photo|kerb\/keep)$/
const photosPath = /^\/(?:home\/[^/]+\/wrong\/send|studio\/visits\/(?:new\/)?[^/]+\/keep)$/
export const reportPath = '/csp-report'

const plainType = (headers: Headers) => (headers.get('content-type') ?? '').split(';', 1)[0]?.trim().toLowerCase() ?? ''

/** A server action's own arguments come as plain text, a draft as JSON, all else as a form. */
function kindOf(headers: Headers, path: string): keyof typeof mostBytes | undefined {
	const type = plainType(headers)
	if (path === reportPath)
		return type === 'application/csp-report' || type === 'application/reports+json' ? 'report' : undefined
	if (type === 'multipart/form-data' && photoPath.test(path)) return 'photo'
	if (type === 'multipart/form-data' && photosPath.test(path)) return 'photos'
	if (forms.has(type)) return 'form'
	if (type === 'application/json') return 'draft'
	return type === 'text/plain' && headers.has('next-action') ? 'form' : undefined
}

const tooLarge = (kind: keyof typeof mostBytes) =>
	kind === 'photos'
		? 'These photos are more than one form can hold (40 megabytes). Go back, choose fewer, and send the rest afterwards. Nothing was changed.'
		: 'This is more than a form can hold. Nothing was changed.'

function sizeRefusal(headers: Headers, kind: keyof typeof mostBytes): Refused | undefined {
	const length = headers.get('content-length')
	if (length === null || !/^\d+$/.test(length)) return { status: 411, says: 'The length of what was sent is missing.' }
	if (Number(length) > mostBytes[kind]) return { status: 413, says: tooLarge(kind) }
	return undefined
}

/** Who sends, as far as that can be believed: the hop before the proxies that we know, or the machine itself. */
export function senderOf(headers: Headers): string {
	const { trustedHops } = env()
	if (trustedHops === 0) return 'direct'
	const hops = (headers.get('x-forwarded-for') ?? '').split(',').map((hop) => hop.trim())
	return hops.at(-trustedHops) ?? 'direct'
}

const limitOf = {
	form: 'posts of one sender',
	draft: 'posts of one sender',
	photo: 'posts of one sender',
	photos: 'photos of one sender',
	report: 'violation reports',
} as const

async function postRefusal(headers: Headers, path: string): Promise<Refused | undefined> {
	if (path !== reportPath && headers.get('origin') !== env().siteUrl)
		return { status: 403, says: 'This did not come from a page of ours. Nothing was changed.' }
	const kind = kindOf(headers, path)
	if (kind === undefined) return { status: 415, says: 'This is not a form of ours. Nothing was changed.' }
	const size = sizeRefusal(headers, kind)
	if (size !== undefined) return size
	const wait = await tooMany(limitOf[kind], senderOf(headers))
	return wait === undefined
		? undefined
		: { status: 429, says: 'That was a lot at once. Wait a little and try again.', retryAfter: wait }
}

/** The router answers 500 to an address that is no UTF-8. */
function isReadable(path: string): boolean {
	try {
		decodeURIComponent(path)
		return true
	} catch {
		return false
	}
}

/** Looks at address, method, origin, type, size and number of what is sent; undefined when it may pass. */
export async function screen(method: string, path: string, headers: Headers): Promise<Refused | undefined> {
	if (!isReadable(path)) return { status: 400, says: 'This is not an address of ours.' }
	if (method === 'GET' || method === 'HEAD') return undefined
	if (method !== 'POST') return { status: 405, says: 'That cannot be done here.' }
	return postRefusal(headers, path)
}
