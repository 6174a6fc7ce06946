import { chmodSync, cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { v7 } from 'uuid'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { multipart, urlencoded } from './ask/forms'
import { send } from './ask/send'
import { aliveIn, hostile, isStored } from './look/hostile'
import { linkIn, openPostbox, type Postbox } from './site/postbox'
import { nextStart, type Started } from './site/run'
import { template } from './template'

let folder: string
let postbox: Postbox

beforeAll(async () => {
	folder = mkdtempSync(join(tmpdir(), 'doorsill-start-'))
	postbox = await openPostbox()
})

afterAll(async () => {
	rmSync(folder, { recursive: true, force: true })
	await postbox.close()
})

function freePort(): Promise<number> {
	return new Promise((resolve, reject) => {
		const probe = createServer()
		probe.once('error', reject)
		probe.listen(0, '127.0.0.1', () => {
			const at = probe.address()
			probe.close(() => (at === null || typeof at === 'string' ? reject(new Error('no port')) : resolve(at.port)))
		})
	})
}

let copies = 0
function copyOf(kind: 'empty' | 'demo' | 'studio' | 'open key'): string {
	copies += 1
	const made = join(folder, String(copies))
	if (kind === 'empty' || kind === 'open key') mkdirSync(made)
	else cpSync(template, made, { recursive: true })
	if (kind === 'studio') rmSync(join(made, 'demo'))
	if (kind === 'open key') {
		writeFileSync(join(made, 'key'), 'a'.repeat(43))
		chmodSync(join(made, 'key'), 0o644)
	}
	return made
}

const studio = 'https://studio.example'

type Bad = {
	readonly what: string
	readonly of: Parameters<typeof copyOf>[0]
	readonly env: Readonly<Record<string, string>>
	readonly says: RegExp
}

const bad: readonly Bad[] = [
	{
		what: 'http to others',
		of: 'studio',
		env: { SITE_URL: 'http://studio.example' },
		says: /SITE_URL has to begin with https:/,
	},
	{
		what: 'http to a name like loopback',
		of: 'studio',
		env: { SITE_URL: 'http://127.0.0.1.studio.example' },
		says: /SITE_URL has to begin with https:/,
	},
	{
		what: 'an address with a path',
		of: 'studio',
		env: { SITE_URL: `${studio}/door` },
		says: /SITE_URL is not an origin/,
	},
	{ what: 'an address with a slash', of: 'studio', env: { SITE_URL: `${studio}/` }, says: /SITE_URL is not an origin/ },
	{ what: 'no address', of: 'studio', env: { SITE_URL: 'studio' }, says: /SITE_URL is not an origin/ },
	{
		what: 'another scheme',
		of: 'studio',
		env: { SITE_URL: 'ftp://studio.example' },
		says: /SITE_URL (?:is not an origin|has to begin with https:)/,
	},
	{
		what: 'a mail server that is none',
		of: 'studio',
		env: { SITE_URL: studio, SMTP_URL: 'mail.example:465' },
		says: /SMTP_URL is not an address/,
	},
	{
		what: 'a mail server over the web',
		of: 'studio',
		env: { SITE_URL: studio, SMTP_URL: 'https://mail.example' },
		says: /SMTP_URL is not an address/,
	},
	{
		what: 'a sender that is none',
		of: 'studio',
		env: { SITE_URL: studio, MAIL_FROM: 'studio' },
		says: /MAIL_FROM is not a mail address/,
	},
	{ what: 'proxies below none', of: 'studio', env: { SITE_URL: studio, TRUSTED_HOPS: '-1' }, says: /TRUSTED_HOPS / },
	{ what: 'a demo that is none', of: 'studio', env: { DEMO: '1' }, says: /DEMO is set, but .* holds no demo/ },
	{ what: 'a demo in an empty folder', of: 'empty', env: { DEMO: '1' }, says: /DEMO is set, but .* holds no demo/ },
	{ what: 'a demo taken for a studio', of: 'demo', env: { SITE_URL: studio }, says: /holds a demo\. Set DATA_DIR/ },
	{
		what: 'a demo shown to others',
		of: 'demo',
		env: { DEMO: '1', SITE_URL: studio },
		says: /DEMO is for this machine alone/,
	},
	{ what: 'a demo that is half said', of: 'demo', env: { DEMO: 'yes' }, says: /DEMO / },
	{
		what: 'a key that others can read',
		of: 'open key',
		env: { SITE_URL: studio },
		says: /can be read by others: chmod 600/,
	},
	{
		what: 'a clock put forward',
		of: 'studio',
		env: { SITE_URL: studio, CLOCK_OFFSET_MS: '60000' },
		says: /CLOCK_OFFSET_MS is for a demo alone/,
	},
	{
		what: 'a clock in words',
		of: 'studio',
		env: { SITE_URL: studio, CLOCK_OFFSET_MS: 'later' },
		says: /CLOCK_OFFSET_MS /,
	},
]

describe('a start that would go wrong', () => {
	it.each(bad)('$what: one clear line and out', async ({ of, env, says }) => {
		const data = copyOf(of)
		const before = existsSync(join(data, 'studio.db'))
		const port = await freePort()
		const { code, said, stop } = nextStart(port, { DATA_DIR: data, LOG_FILE: join(folder, 'bad.log'), ...env })
		const late = setTimeout(() => void stop(), 30_000)
		expect(await code).toBe(1)
		clearTimeout(late)
		const lines = said()
			.split('\n')
			.filter((line) => line.includes('Doorsill did not start'))
		expect([lines.length, lines[0]]).toEqual([1, expect.stringMatching(says)])
		expect(said()).not.toMatch(/\n\s+at |unhandled|uncaught/i)
		if (of === 'empty') expect(existsSync(join(data, 'studio.db'))).toBe(before)
	})
})

describe('a port that is none', () => {
	it('is refused by the framework before anything of ours runs, in one line', async () => {
		const { code, said } = nextStart(undefined, { DATA_DIR: copyOf('studio'), SITE_URL: studio, PORT: 'three' })
		expect(await code).toBe(1)
		expect(said()).toMatch(/^error: .*PORT.* is invalid.*\n$/)
	})
})

async function untilUp(origin: string, { code, said }: Started): Promise<void> {
	let ended = false
	void code.then(() => {
		ended = true
	})
	for (let tries = 0; tries < 200; tries += 1) {
		if (ended) throw new Error(said())
		const isUp = await send(origin, '/sign-in').then(
			({ status }) => status === 200,
			() => false,
		)
		if (isUp) return
		await new Promise((resolve) => setTimeout(resolve, 100))
	}
	throw new Error(said())
}

/** A set-up with one field of what it is not for comes back with what was typed; the link stays good. */
async function refusesBadSetUp(origin: string, made: Readonly<Record<string, string>>): Promise<void> {
	const kinds = {
		name: 'words',
		designer: 'words',
		address: 'address',
		timeZone: 'choice',
		currency: 'choice',
	} as const
	for (const [field, kind] of Object.entries(kinds))
		for (const { what, value } of hostile.filter((each) => !isStored(kind, each))) {
			const typed = Object.entries({ ...made, once: v7() }).map(
				([name, words]) => [name, name === field ? value : words] as const,
			)
			const back = await send(origin, '/set-up/make', { method: 'POST', ...multipart(typed) })
			const { status, body } = await send(origin, String(back.headers.location))
			const found = [field, what, back.status, status, aliveIn(body), body.includes('role="alert"')]
			expect(found).toEqual([field, what, 303, 200, [], true])
		}
}

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
