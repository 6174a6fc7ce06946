import { Agent, type IncomingHttpHeaders, type OutgoingHttpHeaders, request } from 'node:http'

export type Sending = {
	readonly method?: string
	readonly headers?: OutgoingHttpHeaders
	readonly body?: string | Buffer
	/** What the session's cookie holds. */
	readonly session?: string | undefined
}

export type Answer = {
	readonly status: number
	readonly headers: IncomingHttpHeaders
	readonly body: string
	readonly ms: number
}

const agent = new Agent({ keepAlive: true, maxSockets: 16 })
let senders = 0

/** An address of its own for each request, so that no limit is met by chance. */
export function freshSender(): string {
	senders += 1
	return `10.${(senders >> 16) & 255}.${(senders >> 8) & 255}.${senders & 255}`
}

function headersOf(origin: string, { method = 'GET', headers = {}, body, session }: Sending): OutgoingHttpHeaders {
	return {
		'x-forwarded-for': freshSender(),
		...(method === 'POST' && { origin }),
		...(body !== undefined && { 'content-length': Buffer.byteLength(body) }),
		...(session !== undefined && { cookie: `doorsill=${session}` }),
		...headers,
	}
}

/** Its body is kept byte for byte, a character each. */
export const isPdf = (headers: IncomingHttpHeaders): boolean => headers['content-type'] === 'application/pdf'

/** One request to the site, its path sent as it is written and no redirect followed; a header set to undefined is left out. */
export function send(origin: string, path: string, sending: Sending = {}): Promise<Answer> {
	const began = performance.now()
	const { method = 'GET', body } = sending
	const given = Object.entries(headersOf(origin, sending)).filter(([, value]) => value !== undefined)
	return new Promise((resolve, reject) => {
		const { hostname, port } = new URL(origin)
		const headers = Object.fromEntries(given)
		const asked = request({ agent, hostname, port, path, method, headers }, (response) => {
			const chunks: Buffer[] = []
			response.on('data', (chunk: Buffer) => chunks.push(chunk))
			response.on('error', reject)
			response.on('end', () =>
				resolve({
					status: response.statusCode ?? 0,
					headers: response.headers,
					body: Buffer.concat(chunks).toString(isPdf(response.headers) ? 'latin1' : 'utf8'),
					ms: performance.now() - began,
				}),
			)
		})
		asked.on('error', reject)
		asked.end(body)
	})
}

/** `act` for every item, at most `most` at a time. */
export async function inParallel<T>(items: readonly T[], most: number, act: (item: T) => Promise<void>): Promise<void> {
	const rest = items.values()
	await Promise.all(
		Array.from({ length: most }, async () => {
			for (const item of rest) await act(item)
		}),
	)
}
