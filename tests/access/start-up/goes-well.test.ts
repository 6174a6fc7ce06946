import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { freePort } from '@/e2e/site/server'
import { urlencoded } from '../ask/forms'
import { send } from '../ask/send'
import { linkIn, openPostbox, type Postbox } from '../site/postbox'
import { nextStart } from '../site/run'
import { copyOf, studio } from './folders'
import { refusesBadSetUp } from './set-up'
import { untilUp } from './up'

let postbox: Postbox

beforeAll(async () => {
	postbox = await openPostbox()
})

afterAll(async () => {
	await postbox.close()
})

describe('a start that goes well', () => {
	it('makes an empty folder a studio that is nobody’s, with a link on the console that works once', async () => {
		const data = copyOf('empty')
		const port = await freePort()
		const origin = `http://127.0.0.1:${port}`
		const started = nextStart(port, { DATA_DIR: data, SITE_URL: origin, LOG_FILE: join(data, 'site.log') })
		try {
			await untilUp(origin, started)
			const token = /\/set-up\?token=([\w-]{43})\n/.exec(started.said())?.[1] ?? ''
			expect(Buffer.from(token, 'base64url').length).toBe(32)
			expect((await send(origin, `/set-up?token=${token}`)).status).toBe(200)
			const made = {
				name: 'Reed & Rush',
				timeZone: 'Europe/Lisbon',
				currency: 'EUR',
				lengths: 'cm',
				designer: 'Ada Rushmere',
				address: 'ada@reed.example',
			}
			await refusesBadSetUp(origin, { ...made, token })
			const form = urlencoded([
				['token', token],
				['once', '01900000-0000-7000-8000-000000000000'],
				...Object.entries(made),
			])
			const both = await Promise.all([1, 2, 3].map(() => send(origin, '/set-up/make', { method: 'POST', ...form })))
			expect(both.map(({ status }) => status).toSorted()).toEqual([303, 404, 404])
			expect((await send(origin, `/set-up?token=${token}`)).status).toBe(404)
		} finally {
			await started.stop()
		}
	})

	it('over TLS marks every cookie as its host’s own and secure, and mails links to its own name', async () => {
		const data = copyOf('studio')
		const port = await freePort()
		const loopback = `http://127.0.0.1:${port}`
		const started = nextStart(port, {
			DATA_DIR: data,
			SITE_URL: studio,
			SMTP_URL: postbox.url,
			MAIL_FROM: 'post@studio.example',
			TRUSTED_HOPS: '1',
			LOG_FILE: join(data, 'site.log'),
		})
		try {
			await untilUp(loopback, started)
			const post = (path: string, fields: readonly (readonly [string, string])[], cookie?: string) => {
				const { body, headers } = urlencoded(fields)
				return send(loopback, path, {
					method: 'POST',
					body,
					headers: { ...headers, origin: studio, ...(cookie && { cookie }) },
				})
			}
			const address = 'corwin@threehawsers.example'
			const asked = await post('/sign-in/ask', [
				['address', address],
				['to', '/home'],
			])
			expect(asked.headers['set-cookie']?.[0]).toMatch(/^__Host-doorsill-ask=.*; Secure/)
			const link = linkIn(await postbox.next(address, /link to sign in/))
			expect(new URL(link).origin).toBe(studio)
			const used = await post(`/api/auth/callback/email${new URL(link).search}`, [])
			const given = used.headers['set-cookie'] ?? []
			expect(given.some((line) => line.startsWith('__Host-doorsill='))).toBe(true)
			for (const line of given) {
				expect(line).toMatch(/^__(?:Host|Secure)-/)
				expect(line).toMatch(/; Secure/i)
				expect(line).toMatch(/; HttpOnly/i)
				expect(line).toMatch(/; SameSite=Lax/i)
				expect(line).not.toMatch(/; Domain=/i)
			}
			const held = /^__Host-doorsill=([^;]+)/m.exec(given.join('\n'))?.[1] ?? ''
			const home = await send(loopback, '/home', { headers: { cookie: `__Host-doorsill=${held}` } })
			expect(home.headers.location).toMatch(/^\/home\//)
			expect((await send(loopback, '/home', { session: held })).headers.location).toMatch(/^\/sign-in/)
			expect((await post('/sign-in/ask', [['address', address]], undefined)).status).toBe(303)
			const plain = urlencoded([['address', address]])
			expect(
				(
					await send(loopback, '/sign-in/ask', {
						method: 'POST',
						...plain,
						headers: { ...plain.headers, origin: loopback },
					})
				).status,
			).toBe(403)
		} finally {
			await started.stop()
		}
	})
})
