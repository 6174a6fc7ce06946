import { describe, expect, it } from 'vitest'
import { open } from '../site/here'
import { kinds } from './kinds'

describe('the head of every kind of answer', () => {
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
