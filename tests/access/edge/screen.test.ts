import type { OutgoingHttpHeaders } from 'node:http'
import { beforeAll, describe, expect, it } from 'vitest'
import { formOf } from '../ask/bodies'
import { actionNamed } from '../ask/build'
import { called, posted } from '../ask/forms'
import type { Sending } from '../ask/send'
import { statusOf, wire } from '../ask/wire'
import { open } from '../site/here'
import { snapshot, snapshotAtRest } from '../site/snapshot'
import { actionRows } from '../table/rows'
import { before, things } from './bakery'
import { type Post, posts } from './posts'

/** Sends each as the person who may, with something about it changed; all have to be told the same. */
async function refusesAll(change: (post: Post) => Sending, status: number): Promise<void> {
	for (const post of posts()) {
		const person = post.what.includes('/answer/') ? 'approver' : 'designer'
		const sending = { method: 'POST', ...post.sending, ...change(post) }
		const answer = await open.ask(person, post.path, sending)
		expect([post.what, answer.status]).toEqual([post.what, status])
		expect(answer.body).toContain('<h1>That did not go through</h1>')
	}
	expect(snapshot(open.site.folder)).toEqual(before)
}

const withHeaders = (headers: OutgoingHttpHeaders) => (post: Post) => ({
	headers: { ...post.sending.headers, ...headers },
})

describe('what did not come from a page of ours', () => {
	const origins: readonly (readonly [string, (own: string) => string | undefined])[] = [
		['no origin at all', () => undefined],
		['"null"', () => 'null'],
		['another site', () => 'https://elsewhere.example'],
		['ours with more behind it', (own) => `${own}.elsewhere.example`],
		['ours with a slash', (own) => `${own}/`],
		['ours under another scheme', (own) => own.replace('http:', 'https:')],
		['ours at another port', (own) => own.replace(/\d+$/, '1')],
		['ours by another name', (own) => own.replace('127.0.0.1', 'localhost')],
		['nothing', () => ''],
	]
	it.each(origins)('%s', async (_, origin) => {
		await refusesAll(withHeaders({ origin: origin(open.site.url) }), 403)
	})

	it('another site, whatever host it says that it asks', async () => {
		const origin = 'https://elsewhere.example'
		await refusesAll(withHeaders({ origin, host: 'elsewhere.example', 'x-forwarded-host': 'elsewhere.example' }), 403)
	})
})

describe('what is not a form of ours', () => {
	it.each([
		'text/xml',
		'text/plain',
		'application/octet-stream',
		'application/x-www-form-urlencoded-not',
		'multipart/mixed',
		'',
	])('%j', async (type) => {
		const bare = ({ sending }: Post) => ({ body: sending.body ?? '', headers: { 'content-type': type } })
		await refusesAll(bare, 415)
	})

	it('no type at all', async () => {
		await refusesAll(({ sending }) => ({ body: sending.body ?? '', headers: {} }), 415)
	})

	it('plain text that says it is an action, to a handler', async () => {
		const headers = { 'content-type': 'text/plain', 'next-action': actionNamed('plan').id }
		for (const path of ['/sign-in/ask', '/sign-in/code', `/proposal/${things.proposal}/answer/approve`, '/set-up/make'])
			await open.ask('designer', path, { method: 'POST', body: '["x"]', headers })
		expect(snapshot(open.site.folder)).toEqual(before)
	})
})

describe('other methods', () => {
	it.each([
		['PUT', 405],
		['PATCH', 405],
		['DELETE', 405],
		['OPTIONS', 405],
		['PROPFIND', 405],
		// The framework cannot make a request of TRACE and fails before anything of ours runs; nothing is echoed.
		['TRACE', 500],
		// Shut without a word, as everything is that no handler listens for.
		['CONNECT', 0],
		['NONSENSE', 400],
	])('%s', async (method, status) => {
		const secret = 'echo-me-7d1f0a52'
		const said = await wire(
			open.site.url,
			`${method} ${method === 'CONNECT' ? 'elsewhere.example:80' : '/studio'} HTTP/1.1\r\nHost: 127.0.0.1\r\nCookie: doorsill=${secret}\r\nX-Method-Override: POST\r\nConnection: close\r\n\r\n`,
		)
		expect([method, statusOf(said), said.includes(secret)]).toEqual([method, status, false])
	})
})

describe('an action somewhere else than on its page', () => {
	let was: Record<string, string>
	beforeAll(async () => {
		was = await snapshotAtRest(open.site.folder)
	})

	const stranger = (sending: ReturnType<typeof called>, origin?: string) => ({
		...{ method: 'POST', body: sending.body },
		headers: { ...sending.headers, origin },
	})
	const addresses = ['/', '/sign-in', '/home', '/icon.svg', '/icon.svgx', '/_next/static/x', '/_next/image', '/nothing']

	it.each([...addresses, '/api/auth/session', '/tint/x'])('does nothing at %s', async (path) => {
		for (const { name } of actionRows)
			for (const how of [called, posted]) {
				const sending = how(actionNamed(name).id, formOf(name, things))
				for (const person of ['signed out', 'approver', 'helper'] as const)
					await open.ask(person, path, { method: 'POST', ...sending })
				await open.ask('designer', path, stranger(sending))
				await open.ask('designer', path, stranger(sending, 'https://elsewhere.example'))
			}
		expect(snapshot(open.site.folder)).toEqual(was)
	})
})
