import type { OutgoingHttpHeaders } from 'node:http'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { bodyFor, formOf, pageWith } from './ask/bodies'
import { actionNamed } from './ask/build'
import { pathOf } from './ask/cells'
import { called, json, multipart, posted, urlencoded } from './ask/forms'
import { freshSender, type Sending, send } from './ask/send'
import { statusOf, wire } from './ask/wire'
import { actionRows, rows } from './rows'
import { type OpenSite, openSite } from './site/open'
import { mailIsOut, snapshot } from './site/snapshot'
import { draftOf, type Things, thingsOf } from './site/things'

let open: OpenSite
let things: Things
let draft: unknown
let before: Record<string, string>

beforeAll(async () => {
	open = await openSite()
	things = thingsOf(open.site.folder, open.site.cast, 'bakery')
	draft = draftOf(open.site.folder, things.proposal)
	before = snapshot(open.site.folder)
})

afterAll(async () => {
	await open.close()
})

type Post = { readonly what: string; readonly path: string; readonly sending: Sending }

/** Every form and every action, filled in so that it would go through, of the person who may send it. */
function posts(): Post[] {
	const forms = rows
		.filter(({ method, route }) => method === 'POST' && route !== '/csp-report')
		.map((row) => ({
			what: pathOf(row, ':id', things),
			path: pathOf(row, things.proposal, things),
			sending: bodyFor(row, things, draft),
		}))
	const actions = actionRows.map(({ name }) => ({
		what: `action ${name}`,
		path: pageWith(name, things),
		sending: called(actionNamed(name).id, formOf(name, things)),
	}))
	return [...forms, ...actions]
}

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

describe('how much comes', () => {
	const head = (more: string) =>
		`POST /sign-in/ask HTTP/1.1\r\nHost: 127.0.0.1\r\nOrigin: ${open.site.url}\r\nX-Forwarded-For: ${freshSender()}\r\nConnection: close\r\nContent-Type: application/x-www-form-urlencoded\r\n${more}\r\n\r\n`

	it.each([
		['in pieces of no known length', 'Transfer-Encoding: chunked', '9\r\naddress=a\r\n0\r\n\r\n', 411],
		['without a word about it', 'X-Nothing: 1', '', 411],
		['of two lengths', 'Content-Length: 3\r\nContent-Length: 4', 'a=b', 400],
		['of a length and in pieces', 'Content-Length: 3\r\nTransfer-Encoding: chunked', '0\r\n\r\n', 400],
		['of a length that is no number', 'Content-Length: three', 'a=b', 400],
		['of a length below nothing', 'Content-Length: -3', 'a=b', 400],
		['more than it says, as a request of its own', 'Content-Length: 3', 'a=bGET /studio HTTP/1.1\r\n\r\n', 400],
	])('%s', async (_, more, body, status) => {
		expect(statusOf(await wire(open.site.url, head(more) + body))).toBe(status)
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	const kilobyte = 1024
	it.each([
		['a form', '/sign-in/ask', 'application/x-www-form-urlencoded', 64 * kilobyte],
		['a form in parts', '/sign-in/ask', 'multipart/form-data; boundary=x', 64 * kilobyte],
		['a draft', '/studio/proposal/:id/save', 'application/json', 400 * kilobyte],
		['a report', '/csp-report', 'application/csp-report', 16 * kilobyte],
	])('%s: as much as it may hold, and one byte more', async (_, to, type, most) => {
		const path = to.replace(':id', things.proposal)
		const sending = (length: number) => ({
			method: 'POST',
			body: 'x'.repeat(length),
			headers: { 'content-type': type },
		})
		expect((await open.ask('designer', path, sending(most))).status).not.toBe(413)
		expect((await open.ask('designer', path, sending(most + 1))).status).toBe(413)
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	it('far more than it may hold: read to its end by the framework, and refused', async () => {
		const body = 'x'.repeat(3_000_000)
		const headers = { 'content-type': 'application/x-www-form-urlencoded' }
		expect((await open.ask('designer', '/sign-in/ask', { method: 'POST', body, headers })).status).toBe(413)
	})

	it('a little, said to be much: waited for, while others are served', async () => {
		const waiting = wire(open.site.url, `${head('Content-Length: 9999999999')}a=b`).catch(() => '')
		expect((await open.ask('signed out', '/sign-in')).status).toBe(200)
		expect([0, 413]).toContain(statusOf(await waiting))
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

describe('too often', () => {
	const many = async (count: number, path: string, sending: (turn: number) => Sending) => {
		const answers = []
		for (let turn = 0; turn < count; turn += 1)
			answers.push(await send(open.site.url, path, { method: 'POST', ...sending(turn) }))
		return answers
	}
	const nothing = urlencoded([['x', '1']])
	const from = (sender: string) => ({ ...nothing, headers: { ...nothing.headers, 'x-forwarded-for': sender } })
	const form = (address: string, sender: string) => {
		const { body, headers } = urlencoded([['address', address]])
		return { body, headers: { ...headers, 'x-forwarded-for': sender } }
	}
	const statuses = (answers: readonly { status: number }[]) => answers.map(({ status }) => status)

	it('posts of one sender: 240 a minute, whatever stands before it in the chain of proxies', async () => {
		const answers = await many(242, '/sign-out', (turn) => from(`192.0.2.${turn % 200}, 198.51.100.7`))
		expect(statuses(answers.slice(0, 240))).toEqual(Array.from({ length: 240 }, () => 303))
		for (const { status, headers } of answers.slice(240)) {
			expect(status).toBe(429)
			expect(Number(headers['retry-after'])).toBeGreaterThan(0)
			expect(Number(headers['retry-after'])).toBeLessThanOrEqual(60)
		}
		expect(statuses(await many(1, '/sign-out', () => from('198.51.100.8')))).toEqual([303])
	})

	it('links to one address: five an hour from one sender, and nobody else is locked out; known here or not', async () => {
		for (const address of ['often@elsewhere.example', open.site.cast.people.innApprover.address]) {
			const stranger = freshSender()
			const answers = await many(6, '/sign-in/ask', () => form(address, stranger))
			expect(statuses(answers)).toEqual([303, 303, 303, 303, 303, 429])
			expect(Number(answers[5]?.headers['retry-after'])).toBeGreaterThan(3000)
			const loud = await many(1, '/sign-in/ask', () => form(` ${address.toUpperCase()} `, stranger))
			expect(statuses(loud)).toEqual([429])
			expect(statuses(await many(1, '/sign-in/ask', () => form(address, freshSender())))).toEqual([303])
		}
	})

	it('links to one address: thirty an hour in all, so that a mailbox is not flooded', async () => {
		const answers = await many(31, '/sign-in/ask', () => form('flooded@elsewhere.example', freshSender()))
		expect(new Set(statuses(answers.slice(0, 30)))).toEqual(new Set([303]))
		expect(answers[30]?.status).toBe(429)
	})

	it('links asked by one sender: twenty an hour', async () => {
		const answers = await many(21, '/sign-in/ask', (turn) => form(`w${turn}@elsewhere.example`, '198.51.100.21'))
		expect(statuses(answers.slice(18))).toEqual([303, 303, 429])
		expect(answers[20]?.headers['retry-after']).toBeDefined()
	})

	it('confirmations of one sender: thirty in ten minutes, by link and by code together', async () => {
		const links = await many(30, '/api/auth/callback/email?token=none', () => from('198.51.100.30'))
		expect(new Set(links.map(({ headers }) => headers.location))).toEqual(new Set(['/sign-in/over']))
		const [more] = await many(1, '/api/auth/callback/email?token=none', () => from('198.51.100.30'))
		expect(more?.headers.location).toBe('/sign-in/over?often')
		const cookie = `doorsill-ask=${encodeURIComponent(JSON.stringify({ ask: 'x', address: '', handle: '', to: '/' }))}`
		const { body, headers } = urlencoded([['code', '12345678']])
		const [code] = await many(1, '/sign-in/code', () => ({
			body,
			headers: { ...headers, cookie, 'x-forwarded-for': '198.51.100.30' },
		}))
		expect(code?.headers.location).toBe('/sign-in/sent?code=over')
	})

	it('reports of one sender: sixty a minute', async () => {
		const report = {
			...json({}),
			headers: { 'content-type': 'application/csp-report', 'x-forwarded-for': '198.51.100.60' },
		}
		expect(statuses(await many(61, '/csp-report', () => report)).slice(58)).toEqual([204, 204, 429])
	})
})

describe('the head of every kind of answer', () => {
	const action = () => called(actionNamed('plan').id, formOf('plan', things))
	type Kind = readonly [
		what: string,
		answer: () => ReturnType<OpenSite['ask']>,
		status: number,
		policy: 'policy' | 'none',
		kept?: RegExp,
	]
	const get =
		(person: Parameters<OpenSite['ask']>[0], path: () => string, more: Sending = {}) =>
		() =>
			open.ask(person, path(), more)
	const post = (person: Parameters<OpenSite['ask']>[0], path: () => string, body: () => Sending) => () =>
		open.ask(person, path(), { method: 'POST', ...body() })
	const form = () => urlencoded([['x', '1']])
	const asset = async () => {
		const { body } = await open.ask('signed out', '/sign-in')
		return /href="(\/_next\/static\/[^"]+\.css)"/.exec(body)?.[1] ?? ''
	}
	const proposal = () => `/proposal/${things.proposal}`
	const never = /no-store/
	const kinds: readonly Kind[] = [
		['a client’s page', get('approver', proposal), 200, 'policy', never],
		['its parts', get('approver', () => `${proposal()}?_rsc`, { headers: { rsc: '1' } }), 200, 'policy', never],
		['a page of the studio', get('designer', () => '/studio/materials'), 200, 'policy', never],
		['a public page', get('signed out', () => '/sign-in'), 200, 'policy', never],
		['a page that leads on', get('approver', () => '/home'), 307, 'policy', never],
		['a page that is hidden', get('other approver', proposal), 404, 'policy', never],
		['a page that is forbidden', get('looker', () => `${proposal()}/approve`), 403, 'policy', never],
		['a page that is not there', get('signed out', () => '/nothing/at/all'), 404, 'policy', never],
		['an address that is no text', get('signed out', () => '/proposal/%E0%A4%A'), 400, 'policy', never],
		['an address beside the icon', get('signed out', () => '/icon.svgx'), 404, 'policy', never],
		['a handler that leads on', post('signed out', () => '/sign-in/code', form), 303, 'policy', never],
		['a handler that hides', post('helper', () => `${proposal()}/answer/skip`, form), 404, 'policy', never],
		['a handler that forbids', post('looker', () => `${proposal()}/answer/skip`, form), 403, 'policy', never],
		[
			'a price',
			post(
				'designer',
				() => `/studio${proposal()}/price`,
				() => json({ draft }),
			),
			200,
			'policy',
			never,
		],
		[
			'a draft with errors',
			post(
				'designer',
				() => `/studio${proposal()}/price`,
				() => json({}),
			),
			422,
			'policy',
			never,
		],
		['a session', get('approver', () => '/api/auth/session'), 200, 'policy', never],
		['a token against forgery', get('signed out', () => '/api/auth/csrf'), 200, 'policy', never],
		['an address of the library that is shut', get('signed out', () => '/api/auth/signin'), 404, 'policy', never],
		['an action that leads to sign-in', post('signed out', () => '/studio', action), 200, 'policy', never],
		['an action that is hidden', post('approver', () => '/studio', action), 404, 'policy', never],
		[
			'an action without scripts',
			post(
				'signed out',
				() => '/studio',
				() => posted(actionNamed('plan').id, []),
			),
			303,
			'policy',
			never,
		],
		[
			'an action that the build has not',
			post(
				'designer',
				() => '/studio',
				() => called('00'.repeat(21), []),
			),
			409,
			'policy',
		],
		[
			'a form for no action',
			post(
				'designer',
				() => '/studio',
				() => multipart([['a', 'b']]),
			),
			400,
			'policy',
		],
		[
			'a report',
			post(
				'signed out',
				() => '/csp-report',
				() => ({ ...json({}), headers: { 'content-type': 'application/csp-report' } }),
			),
			204,
			'policy',
		],
		[
			'a foreign origin',
			post(
				'designer',
				() => '/sign-out',
				() => ({ ...form(), headers: { origin: 'null' } }),
			),
			403,
			'policy',
			never,
		],
		['a method that is none of ours', get('designer', () => '/studio', { method: 'PUT' }), 405, 'policy', never],
		['a handler without anything to show', get('designer', () => '/sign-out'), 405, 'policy'],
		[
			'a tint',
			get('signed out', () => '/tint/5f7488-b5653a.css'),
			200,
			'policy',
			/^public, max-age=31536000, immutable$/,
		],
		['no tint', get('signed out', () => '/tint/x.css'), 404, 'policy'],
		['the icon', get('signed out', () => '/icon.svg'), 200, 'none', /^public/],
		['a file of the build', async () => open.ask('signed out', await asset()), 200, 'none', /immutable/],
		['no file of the build', get('signed out', () => '/_next/static/none.js'), 404, 'none'],
		[
			'a picture for the framework’s converter',
			get('designer', () => '/_next/image?url=%2Fstudio&w=64&q=75'),
			404,
			'policy',
			never,
		],
	]

	it.each(kinds.map(([what, ask, status, policy, kept]) => ({ what, ask, status, policy, kept })))(
		'$what',
		async ({ ask, status, policy, kept }) => {
			const { status: said, headers, body } = await ask()
			expect(said).toBe(status)
			expect(headers).toMatchObject({
				'strict-transport-security': 'max-age=63072000; includeSubDomains',
				'x-content-type-options': 'nosniff',
				'referrer-policy': 'same-origin',
				'cross-origin-opener-policy': 'same-origin',
				'cross-origin-resource-policy': 'same-origin',
			})
			expect([headers['x-powered-by'], headers.server, headers['access-control-allow-origin']]).toEqual([
				undefined,
				undefined,
				undefined,
			])
			if (kept !== undefined) expect(headers['cache-control']).toMatch(kept)
			if (policy === 'none') return
			const csp = String(headers['content-security-policy'])
			for (const part of [
				"default-src 'none'",
				"object-src 'none'",
				"base-uri 'none'",
				"frame-ancestors 'none'",
				"form-action 'self'",
			])
				expect(csp).toContain(part)
			expect(csp).not.toMatch(/unsafe|\*|https?:|data:(?!;)(?!.*img)/)
			const [nonce, ...more] = new Set([...csp.matchAll(/'nonce-([^']+)'/g)].map(([, each]) => each))
			expect([Buffer.from(nonce ?? '', 'base64').length >= 16, more]).toEqual([true, []])
			const isHtml = String(headers['content-type']).startsWith('text/html')
			for (const [tag] of isHtml ? body.matchAll(/<(?:script|style)\b[^>]*>/g) : [])
				expect(tag).toContain(`nonce="${nonce}"`)
			if (isHtml) expect(body.replace(/<script[^>]*>.*?<\/script>/gs, '')).not.toMatch(/\s(?:style|on\w+)=/)
		},
	)

	it('is bare where the framework itself leads on, before anything of ours runs: to a place here', async () => {
		for (const [from, to] of [
			['/sign-in/', '/sign-in'],
			['//elsewhere.example', '/elsewhere.example'],
			['//elsewhere.example/', '/elsewhere.example/'],
			['/\\elsewhere.example/', '/elsewhere.example/'],
			['/%5celsewhere.example/', '/%5celsewhere.example'],
			['/sign-in//', '/sign-in/'],
		] as const) {
			const { status, headers } = await open.ask('signed out', from)
			expect([from, status, headers.location]).toEqual([from, 308, to])
		}
	})

	it('has another nonce each time', async () => {
		const nonces = await Promise.all(Array.from({ length: 20 }, () => open.ask('signed out', '/sign-in')))
		expect(new Set(nonces.map(({ headers }) => headers['content-security-policy'])).size).toBe(20)
	})
})

describe('an action somewhere else than on its page', () => {
	let was: Record<string, string>
	beforeAll(async () => {
		await mailIsOut(open.site.folder)
		was = snapshot(open.site.folder)
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
