import { describe, expect, it } from 'vitest'
import { urlencoded } from '../ask/forms'
import { send } from '../ask/send'
import { open } from '../site/here'
import type { Letter } from '../site/postbox'
import { count, record, snapshot, snapshotAtRest } from '../site/snapshot'
import { addressOf, ask, pathIn } from './ask'
import { browser } from './browser'

describe('a link', () => {
	it('is used up by nobody who only looks: scanners, previews, the person', async () => {
		const { letter, as } = await ask(addressOf('innApprover'))
		const { confirm, use } = pathIn(letter)
		const before = await snapshotAtRest(open.site.folder)
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
		const before = count(open.site.folder, 'session')
		const all = Array.from({ length: 12 }, () => browser())
		const said = await Promise.all(all.map((each) => each.post(use)))
		expect(count(open.site.folder, 'session')).toBe(before + 1)
		expect(said.filter(({ headers }) => headers.location === '/home').length).toBe(1)
		expect(said.filter(({ headers }) => headers.location === '/sign-in/over').length).toBe(11)
		expect(all.filter(({ jar }) => jar.has('doorsill')).length).toBe(1)
	})

	it('that is used, wrong or over ends no session and forgets nothing of who pressed it', async () => {
		const { letter, as } = await ask(addressOf('bicyclesApprover'))
		const { use } = pathIn(letter)
		await as.post(use)
		await as.post('/sign-in/ask', [['address', 'other@elsewhere.example']])
		const before = await snapshotAtRest(open.site.folder)
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
		const before = await snapshotAtRest(open.site.folder)
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
