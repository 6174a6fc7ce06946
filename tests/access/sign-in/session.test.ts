import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { urlencoded } from '../ask/forms'
import { send } from '../ask/send'
import { open } from '../site/here'
import { openSession } from '../site/people'
import { linkIn } from '../site/postbox'
import { count, record, snapshot, snapshotAtRest } from '../site/snapshot'
import { addressOf, ask, pathIn } from './ask'
import { browser } from './browser'

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
		const before = await snapshotAtRest(open.site.folder)
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
			const before = count(open.site.folder, 'session')
			const { body, headers } = urlencoded(more)
			const out = await send(url, path, { method: 'POST', session, body, headers })
			expect([out.status, out.headers['clear-site-data']]).toEqual([303, '"cache", "storage"'])
			expect(out.headers['set-cookie']?.some((line) => /^doorsill=;.*Max-Age=0/.test(line))).toBe(true)
			expect(count(open.site.folder, 'session')).toBe(before - 1)
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
