import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { PersonKey } from '@/demo/cast/people'
import { type Fields, urlencoded } from './ask/forms'
import { type Answer, type Sending, send } from './ask/send'
import { type OpenSite, openSite } from './site/open'
import { openSession } from './site/people'
import { type Letter, linkIn } from './site/postbox'
import { mailIsOut, record, snapshot } from './site/snapshot'

let open: OpenSite

beforeAll(async () => {
	open = await openSite()
})

afterAll(async () => {
	await open.close()
})

const addressOf = (key: PersonKey) => open.site.cast.people[key].address
const count = (table: string) =>
	record(open.site.folder, (db) => Number(db.prepare(`SELECT count(*) FROM ${table}`).pluck().get()))

/** A browser: keeps the cookies that it is given and sends them back. */
function browser(more: Sending['headers'] = {}) {
	const jar = new Map<string, string>()
	const visit = async (path: string, sending: Sending = {}): Promise<Answer> => {
		const cookie = [...jar].map(([name, value]) => `${name}=${value}`).join('; ')
		const headers = { ...more, ...sending.headers, ...(cookie !== '' && { cookie }) }
		const answer = await send(open.site.url, path, { ...sending, headers })
		for (const line of answer.headers['set-cookie'] ?? []) {
			const [, name = '', value = ''] = /^([^=]+)=([^;]*)/.exec(line) ?? []
			if (value === '') jar.delete(name)
			else jar.set(name, value)
		}
		return answer
	}
	const post = (path: string, fields: Fields = []) => {
		const { body, headers } = urlencoded(fields)
		return visit(path, { method: 'POST', body, headers })
	}
	return { jar, visit, post }
}

const turns = new Map<string, number>()

/** Asks for a link with an address and waits for the mail. */
async function ask(
	address: string,
	to = '/home',
	as = browser(),
): Promise<{ letter: Letter; as: ReturnType<typeof browser> }> {
	const said = await as.post('/sign-in/ask', [
		['address', address],
		['to', to],
	])
	expect(said.headers.location).toBe('/sign-in/sent')
	const before = turns.get(address) ?? 0
	turns.set(address, before + 1)
	const letter = await open.postbox.next(address, /link to sign in/, before)
	await mailIsOut(open.site.folder)
	return { letter, as }
}

const pathIn = (letter: Letter) => {
	const { pathname, search } = new URL(linkIn(letter, '/sign-in/confirm'))
	return { confirm: `${pathname}${search}`, use: `/api/auth/callback/email${search}` }
}

describe('a link', () => {
	it('is used up by nobody who only looks: scanners, previews, the person', async () => {
		const { letter, as } = await ask(addressOf('innApprover'))
		const { confirm, use } = pathIn(letter)
		const before = snapshot(open.site.folder)
		for (const path of [confirm, use])
			for (const method of ['GET', 'HEAD', 'GET']) {
				const scanner = await send(open.site.url, path, { method, headers: { 'user-agent': 'Mozilla/5.0 (scan)' } })
				expect([path.slice(0, 20), method, scanner.headers['set-cookie']]).toEqual([
					path.slice(0, 20),
					method,
					undefined,
				])
			}
		for (const method of ['PUT', 'DELETE', 'OPTIONS']) await send(open.site.url, use, { method })
		expect(snapshot(open.site.folder)).toEqual(before)
		const shown = await as.visit(confirm)
		expect(shown.body).toContain(addressOf('innApprover'))
		const used = await as.post(use)
		expect([used.status, used.headers.location]).toEqual([303, '/home'])
		expect((await as.visit('/')).headers.location).toBe('/home')
	})

	it('works once: of twelve at the same moment one is let in', async () => {
		const { letter } = await ask(addressOf('vetApprover'))
		const { use } = pathIn(letter)
		const before = count('session')
		const all = Array.from({ length: 12 }, () => browser())
		const said = await Promise.all(all.map((each) => each.post(use)))
		expect(count('session')).toBe(before + 1)
		expect(said.filter(({ headers }) => headers.location === '/home').length).toBe(1)
		expect(said.filter(({ headers }) => headers.location === '/sign-in/over').length).toBe(11)
		expect(all.filter(({ jar }) => jar.has('doorsill')).length).toBe(1)
	})

	it('that is used, wrong or over ends no session and forgets nothing of who pressed it', async () => {
		const { letter, as } = await ask(addressOf('bicyclesApprover'))
		const { use } = pathIn(letter)
		await as.post(use)
		await as.post('/sign-in/ask', [['address', 'other@elsewhere.example']])
		await mailIsOut(open.site.folder)
		const before = snapshot(open.site.folder)
		const held = new Map(as.jar)
		for (const path of [
			use,
			'/api/auth/callback/email?token=none',
			'/api/auth/callback/email',
			'/api/auth/callback/email?token=',
		])
			expect((await as.post(path)).headers.location).toBe('/sign-in/over')
		expect(snapshot(open.site.folder)).toEqual(before)
		expect([as.jar.get('doorsill'), as.jar.get('doorsill-ask')]).toEqual([
			held.get('doorsill'),
			held.get('doorsill-ask'),
		])
		expect((await as.visit('/')).headers.location).toBe('/home')
	})

	it('is void as soon as its browser asks for a newer one, whatever a stranger asks for, and after ten minutes', async () => {
		const first = await ask(addressOf('dentalApprover'))
		const second = await ask(addressOf('dentalApprover'), '/', first.as)
		const strangers = await ask(addressOf('dentalApprover'))
		expect((await browser().post(pathIn(first.letter).use)).headers.location).toBe('/sign-in/over')
		expect((await browser().visit(pathIn(second.letter).confirm)).status).toBe(200)
		expect((await browser().visit(pathIn(strangers.letter).confirm)).status).toBe(200)
		const life = record(open.site.folder, (db) =>
			db
				.prepare<[string], number>('SELECT expires FROM sign_in_token WHERE identifier = ?')
				.pluck()
				.get(addressOf('dentalApprover')),
		)
		expect(Number(life) - Date.now()).toBeLessThanOrEqual(600_000)
		record(open.site.folder, (db) => db.prepare('UPDATE sign_in_token SET expires = ?').run(Date.now() - 1))
		expect((await browser().visit(pathIn(second.letter).confirm)).headers.location).toBe('/sign-in/over')
		expect((await browser().post(pathIn(second.letter).use)).headers.location).toBe('/sign-in/over')
	})

	it('pressed on another site is refused and stays whole', async () => {
		const { letter } = await ask(addressOf('stuccoApprover'))
		const { use } = pathIn(letter)
		const before = snapshot(open.site.folder)
		for (const origin of ['https://elsewhere.example', 'null', undefined]) {
			const { body, headers } = urlencoded([])
			const said = await send(open.site.url, use, { method: 'POST', body, headers: { ...headers, origin } })
			expect(said.status).toBe(403)
		}
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	it('says so when it was asked for in another browser', async () => {
		const { letter, as } = await ask(addressOf('clapboardApprover'))
		const { confirm } = pathIn(letter)
		expect((await as.visit(confirm)).body).not.toContain('It was asked for in another browser')
		expect((await browser().visit(confirm)).body).toContain('It was asked for in another browser')
	})
})

describe('a code', () => {
	const codeIn = ({ text }: Letter) => /\b(\d{8})\b|\b(\d{4}) (\d{4})\b/.exec(text)?.slice(1).join('') ?? ''

	it('signs in the browser that asked, and no other', async () => {
		const { letter, as } = await ask(addressOf('fieldstoneApprover'))
		const code = codeIn(letter)
		expect(code).toMatch(/^\d{8}$/)
		const other = browser()
		expect((await other.post('/sign-in/code', [['code', code]])).headers.location).toBe('/sign-in')
		const forged = browser({
			cookie: `doorsill-ask=${encodeURIComponent(JSON.stringify({ ask: 'x', address: '', handle: '', to: '/' }))}`,
		})
		expect((await forged.post('/sign-in/code', [['code', code]])).headers.location).toBe('/sign-in/sent?code=over')
		expect((await as.post('/sign-in/code', [['code', code]])).headers.location).toBe('/home')
		expect((await as.post('/sign-in/code', [['code', code]])).headers.location).toBe('/sign-in')
	})

	it('is worth nothing after five wrong ones, and the right one comes too late', async () => {
		const { letter, as } = await ask(addressOf('creditUnionApprover'))
		const wrong = codeIn(letter) === '00000000' ? '00000001' : '00000000'
		const said = []
		for (let turn = 0; turn < 5; turn += 1)
			said.push((await as.post('/sign-in/code', [['code', wrong]])).headers.location)
		expect(said).toEqual([...Array.from({ length: 4 }, () => '/sign-in/sent?code=wrong'), '/sign-in/sent?code=over'])
		expect((await as.post('/sign-in/code', [['code', codeIn(letter)]])).headers.location).toBe(
			'/sign-in/sent?code=over',
		)
	})
})

describe('nothing that is looked at makes a session', () => {
	it.each([
		'/api/auth/signin',
		'/api/auth/signin/email',
		'/api/auth/callback/email',
		'/api/auth/session',
		'/api/auth/csrf',
		'/api/auth/signout',
		'/sign-in',
		'/sign-in/confirm',
		'/sign-in/code',
		'/sign-in/ask',
		'/sign-out',
	])('%s', async (path) => {
		const before = snapshot(open.site.folder)
		for (const method of ['GET', 'HEAD']) {
			const { headers } = await send(open.site.url, `${path}?email=${addressOf('innApprover')}&token=x&callbackUrl=/`, {
				method,
			})
			expect((headers['set-cookie'] ?? []).filter((line) => /^doorsill=[^;]/.test(line))).toEqual([])
		}
		expect(snapshot(open.site.folder)).toEqual(before)
	})
})

describe('a session', () => {
	it('is known by 256 random bits that are written down nowhere', async () => {
		const tokens: string[] = []
		for (const key of ['innViewer', 'dentalViewer', 'clapboardViewer'] as const) {
			const { letter, as } = await ask(addressOf(key))
			const { use } = pathIn(letter)
			await as.post(use)
			tokens.push(
				as.jar.get('doorsill') ?? '',
				new URL(linkIn(letter, '/sign-in/confirm')).searchParams.get('token') ?? '',
			)
			tokens.push(JSON.parse(decodeURIComponent(as.jar.get('doorsill-ask') ?? '{"ask":""}')).ask)
		}
		for (const token of tokens.filter((each) => each !== ''))
			expect(Buffer.from(token, 'base64url').length).toBeGreaterThanOrEqual(32)
		expect(new Set(tokens.filter((each) => each !== '')).size).toBeGreaterThanOrEqual(6)
		const files = readdirSync(open.site.folder, { recursive: true, withFileTypes: true }).filter((entry) =>
			entry.isFile(),
		)
		expect(files.map(({ name }) => name)).toEqual(expect.arrayContaining(['studio.db', 'side.db', 'site.log']))
		for (const { parentPath, name } of files) {
			const bytes = readFileSync(join(parentPath, name))
			for (const token of tokens.filter((each) => each !== ''))
				expect([name, bytes.includes(token)]).toEqual([name, false])
		}
	})

	it('has a cookie that no script reads and no other site sends', async () => {
		const { letter, as } = await ask(addressOf('creditUnionViewer'))
		const used = await as.post(pathIn(letter).use)
		const given = used.headers['set-cookie'] ?? []
		expect(given.some((line) => line.startsWith('doorsill='))).toBe(true)
		for (const line of given) {
			expect(line).toMatch(/; HttpOnly/i)
			expect(line).toMatch(/; SameSite=Lax/i)
			expect(line).toMatch(/; Path=\/(?:;|$)/)
			expect(line).not.toMatch(/; Domain=/i)
		}
	})

	it('is a new one at each sign-in, the one before ended', async () => {
		const first = await ask(addressOf('cancelledApprover'))
		await first.as.post(pathIn(first.letter).use)
		const before = first.as.jar.get('doorsill')
		const second = await ask(addressOf('cancelledApprover'), '/home', first.as)
		await second.as.post(pathIn(second.letter).use)
		expect(second.as.jar.get('doorsill')).not.toBe(before)
		expect((await send(open.site.url, '/', { session: before })).headers.location).toBe('/sign-in')
	})

	it('is not what an intruder set beforehand', async () => {
		const { letter } = await ask(addressOf('installedApprover'))
		const chosen = 'A'.repeat(43)
		const victim = browser()
		victim.jar.set('doorsill', chosen)
		await victim.post(pathIn(letter).use)
		expect(victim.jar.get('doorsill')).not.toBe(chosen)
		expect((await send(open.site.url, '/', { session: chosen })).headers.location).toBe('/sign-in')
	})

	it('is over on the server when its holder signs out, and the browser is told to empty what it kept', async () => {
		const { folder, cast, url } = open.site
		for (const [path, more] of [['/sign-out', []]] as const) {
			const session = openSession(folder, cast.people.bookshopApprover.id)
			const before = count('session')
			const { body, headers } = urlencoded(more)
			const out = await send(url, path, { method: 'POST', session, body, headers })
			expect([out.status, out.headers['clear-site-data']]).toEqual([303, '"cache", "storage"'])
			expect(out.headers['set-cookie']?.some((line) => /^doorsill=;.*Max-Age=0/.test(line))).toBe(true)
			expect(count('session')).toBe(before - 1)
			expect((await send(url, '/home', { session })).headers.location).toMatch(/^\/sign-in/)
		}
	})

	it('of staff is over after twelve hours without use, of a contact after fourteen days', async () => {
		const { folder, cast, url } = open.site
		const hour = 3_600_000
		const lands = async (person: 'designer' | 'helper' | 'bakeryViewer', age: number) =>
			(await send(url, '/', { session: openSession(folder, cast.people[person].id, { age }) })).headers.location
		for (const person of ['designer', 'helper'] as const) {
			expect(await lands(person, 11.9 * hour)).toMatch(/^\/studio/)
			expect(await lands(person, 12.1 * hour)).toBe('/sign-in')
		}
		expect(await lands('bakeryViewer', 13.9 * 24 * hour)).toBe('/home')
		expect(await lands('bakeryViewer', 14.1 * 24 * hour)).toBe('/sign-in')
	})

	it('ends with every other of theirs when the studio closes the door', async () => {
		const { folder, cast, url } = open.site
		const [one, two] = [0, 1].map(() => openSession(folder, cast.people.chandleryApprover.id))
		record(folder, (db) =>
			db
				.prepare('UPDATE contact SET ended_at = ? WHERE person_id = ?')
				.run(new Date().toISOString(), cast.people.chandleryApprover.id),
		)
		for (const session of [one, two])
			expect((await send(url, '/home', { session })).headers.location).toMatch(/^\/sign-in/)
	})
})

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
