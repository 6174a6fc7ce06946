import { describe, expect, it } from 'vitest'
import { json, urlencoded } from '../ask/forms'
import { freshSender, type Sending, send } from '../ask/send'
import { statusOf, wire } from '../ask/wire'
import { open } from '../site/here'
import { snapshot } from '../site/snapshot'
import { before, things } from './bakery'

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
