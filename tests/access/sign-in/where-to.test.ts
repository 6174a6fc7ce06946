import { describe, expect, it } from 'vitest'
import { send } from '../ask/send'
import { open } from '../site/here'
import { linkIn } from '../site/postbox'
import { addressOf, ask } from './ask'
import { browser } from './browser'

describe('where a link leads', () => {
	const evil = [
		'//elsewhere.example',
		'/\\elsewhere.example',
		'https://elsewhere.example/',
		'http:elsewhere.example',
		'javascript:alert(1)',
		'/%5celsewhere.example/../',
		'\t//elsewhere.example',
		'/\t/elsewhere.example',
		'/\r\nSet-Cookie: a=b',
		'////elsewhere.example',
		'/@elsewhere.example:80',
		'elsewhere.example',
	]
	const isOurs = (path: string) => new URL(path, open.site.url).origin === open.site.url

	it.each(evil)('never to another site: %j', async (to) => {
		const page = await send(open.site.url, `/sign-in?${new URLSearchParams({ to })}`)
		const kept = /name="to" value="([^"]*)"/.exec(page.body)?.[1] ?? ''
		expect([kept, isOurs(kept)]).toEqual([kept, true])
		const wrong = await browser().post('/sign-in/ask', [
			['address', 'none'],
			['to', to],
		])
		expect(isOurs(new URL(wrong.headers.location ?? '', open.site.url).searchParams.get('to') ?? '')).toBe(true)
		const confirm = await send(
			open.site.url,
			`/api/auth/callback/email?${new URLSearchParams({ token: 'x', callbackUrl: to })}`,
		)
		expect(isOurs(confirm.headers.location ?? '')).toBe(true)
		const over = await browser().post(
			`/api/auth/callback/email?${new URLSearchParams({ token: 'x', callbackUrl: to })}`,
		)
		expect(over.headers.location).toBe('/sign-in/over')
	})

	it('not even when the link itself was changed on its way', async () => {
		const who = ['approvedApprover', 'skippedApprover', 'withdrawnApprover', 'unpricedApprover'] as const
		for (const [index, to] of [
			'//elsewhere.example',
			'https://elsewhere.example/',
			'/\\elsewhere.example',
			'javascript:alert(1)',
		].entries()) {
			const { letter, as } = await ask(addressOf(who[index % who.length] ?? 'approvedApprover'), to)
			const link = new URL(linkIn(letter, '/sign-in/confirm'))
			expect(link.origin).toBe(open.site.url)
			expect(isOurs(link.searchParams.get('callbackUrl') ?? '')).toBe(true)
			link.searchParams.set('callbackUrl', to)
			expect((await as.visit(`${link.pathname}${link.search}`)).body).not.toMatch(/(?:action|href)="[^"]*elsewhere/)
			const used = await as.post(`/api/auth/callback/email${link.search}`)
			expect(['/', '/sign-in/over']).toContain(used.headers.location)
			const kept = /^next-auth\.callback-url=([^;]*)/m.exec((used.headers['set-cookie'] ?? []).join('\n'))?.[1] ?? ''
			expect([to, isOurs(decodeURIComponent(kept))]).toEqual([to, true])
		}
	})

	it('to the site’s own name, whatever host the request names', async () => {
		const spoofed = browser({
			host: 'elsewhere.example',
			'x-forwarded-host': 'elsewhere.example',
			'x-forwarded-proto': 'https',
			'x-forwarded-port': '444',
			forwarded: 'host=elsewhere.example;proto=https',
			'x-original-host': 'elsewhere.example',
			'x-rewrite-url': '//elsewhere.example',
		})
		const { letter } = await ask(addressOf('newcomerApprover'), '/home', spoofed)
		for (const part of [letter.text, letter.html, letter.head, letter.raw])
			expect(part).not.toContain('elsewhere.example')
		expect(new URL(linkIn(letter)).origin).toBe(open.site.url)
		for (const path of ['/sign-in', '/', '/api/auth/csrf', '/api/auth/session', '/nothing']) {
			const { body, headers } = await spoofed.visit(path)
			const { 'x-forwarded-host': _, ...rest } = headers
			expect([path, `${body}${JSON.stringify(rest)}`.includes('elsewhere.example')]).toEqual([path, false])
		}
	})
})
