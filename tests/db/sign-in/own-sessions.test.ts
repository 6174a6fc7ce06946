import { describe, expect, test } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { leaseMail } from '@/db/outbox/lease'
import { sessionAdapter } from '@/db/sign-in/adapter'
import { askForLink } from '@/db/sign-in/ask'
import { endOwnSession, ownSessions, signOutEverywhere } from '@/db/sign-in/own-sessions'
import { personOfSession } from '@/db/sign-in/session'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import { sha256 } from '@/lib/record/hash'
import { changesOf, refused } from '../stage/rows'
import { found, stranger, studio } from '../stage/studio'

const of = studio()
const hour = 3_600_000
const day = 24 * hour
const at = (ms = 0) => new Date(Date.parse(of.cast().now) + ms)
const iso = (ms = 0) => at(ms).toISOString()

type In = { readonly who?: AnyPersonKey; readonly browser?: string; readonly words?: string; readonly ms?: number }

function signIn(
	token: string,
	{ who = 'bakeryApprover', browser = token, words = 'Firefox on Linux', ms = 0 }: In = {},
) {
	const arrival = { browser, words, by: 'link', stamp: of.stamp() } as const
	const userId = of.cast().people[who].id
	return sessionAdapter(() => at(ms), arrival).createSession({ sessionToken: token, userId })
}

const own = async (token: string | undefined, ms = 0, who: AnyPersonKey = 'bakeryApprover') =>
	found(await ownSessions(await of.as(who), token, at(ms)))
const notices = async () => {
	const due = await leaseMail(await of.as('system'), 1000, of.stamp())
	return due.filter(({ message }) => message === 'new device').map(({ person, facts }) => ({ person, facts }))
}

describe('a sign-in', () => {
	test('the first of a person is told to nobody; the browser is known from then on', async () => {
		const first = await changesOf(of.folder(), () => signIn('one', { browser: 'the phone' }))
		expect(first.did).toEqual({ known_device: '+1', session: '+1' })
		const again = await changesOf(of.folder(), () => signIn('two', { browser: 'the phone' }))
		expect(again.did).toEqual({ session: '+1' })
		expect(await notices()).toEqual([])
	})

	test('with another browser is told to that person once, with when and what', async () => {
		await signIn('one', { browser: 'the phone' })
		const { did } = await changesOf(of.folder(), () =>
			signIn('two', { browser: 'at the till', words: 'Edge on Windows' }),
		)
		expect(did).toEqual({ known_device: '+1', outbox: '+1', session: '+1' })
		await signIn('three', { browser: 'at the till' })
		const told = { person: of.cast().people.bakeryApprover.id, facts: { at: iso(), device: 'Edge on Windows' } }
		expect(await notices()).toEqual([told])
	})

	test('of two persons at one browser is new to each; no hash tells that it is the same', async () => {
		await signIn('hers', { browser: 'the kitchen' })
		await signIn('his', { who: 'bakeryViewer', browser: 'the kitchen' })
		expect(await notices()).toEqual([])
		const hashes = stranger(of.folder(), (sqlite) =>
			sqlite.prepare<[], string>('SELECT hash FROM known_device').pluck().all(),
		)
		expect(new Set(hashes).size).toBe(2)
		expect(hashes).not.toContain(sha256('the kitchen'))
	})
})

describe('one’s own sessions', () => {
	test('are listed, this one first, then the last seen', async () => {
		await signIn('old', { words: 'Safari on an iPhone' })
		await signIn('this', { words: 'Firefox on Linux', ms: hour })
		await signIn('new', { words: '', ms: 2 * hour })
		await personOfSession('old', at(3 * hour))
		await signIn('another’s', { who: 'bakeryViewer' })
		const { sessions, timeZone } = await own('this', 4 * hour)
		expect(timeZone).toBe('America/New_York')
		const handle = expect.stringMatching(/^[0-9a-f]{32}$/)
		expect(sessions).toEqual([
			{ handle, words: 'Firefox on Linux', since: iso(hour), seen: iso(hour), isThis: true },
			{ handle, words: 'Safari on an iPhone', since: iso(), seen: iso(3 * hour), isThis: false },
			{ handle, words: '', since: iso(2 * hour), seen: iso(2 * hour), isThis: false },
		])
		const kept = [sha256('old'), sha256('this'), sha256('new')]
		expect(sessions.some((each) => kept.some((key) => key.includes(each.handle)))).toBe(false)
	})

	test('that are over are not', async () => {
		await signIn('idle')
		await signIn('used', { ms: day })
		expect((await own(undefined, 14 * day + 1)).sessions).toHaveLength(1)
		expect((await own(undefined, 30 * day)).sessions).toEqual([])
		await signIn('hers', { who: 'designer' })
		expect((await own(undefined, 12 * hour, 'designer')).sessions).toHaveLength(1)
		expect((await own(undefined, 12 * hour + 1, 'designer')).sessions).toEqual([])
	})

	test('are ended one by one, at once', async () => {
		await signIn('here')
		await signIn('there')
		const { sessions } = await own('here')
		const { handle } = found(sessions.find(({ isThis }) => !isThis))
		const viewer = await of.as('bakeryApprover')
		const { said, did } = await changesOf(of.folder(), () => endOwnSession(viewer, handle))
		expect([said, did]).toEqual([{ ok: true }, { session: '-1' }])
		expect(await personOfSession('there', at())).toBeUndefined()
		expect(await personOfSession('here', at())).toBe(of.cast().people.bakeryApprover.id)
		expect(await refused(of.folder(), () => endOwnSession(viewer, handle))).toEqual({ ok: false, why: 'hidden' })
	})

	test('are nobody else’s to end: a colleague’s, the designer’s', async () => {
		await signIn('hers')
		const [{ handle } = { handle: '' }] = (await own('hers')).sessions
		for (const who of ['bakeryViewer', 'designer', 'helper', 'nobody', 'system'] as const) {
			const viewer = await of.as(who)
			const say = await refused(of.folder(), () => endOwnSession(viewer, handle))
			expect([who, say]).toEqual([who, { ok: false, why: 'hidden' }])
		}
	})
})

describe('everywhere', () => {
	const out = async () => must('out', await signOutEverywhere(await of.as('bakeryApprover'), of.stamp()))

	test('all of one’s own end, with the links on their way; a colleague stays', async () => {
		await signIn('here')
		await signIn('there')
		await signIn('his', { who: 'bakeryViewer' })
		const { address, id } = of.cast().people.bakeryApprover
		await askForLink({ address, askHash: sha256('a browser'), to: '/' }, of.stamp())
		await out()
		for (const token of ['here', 'there']) expect(await personOfSession(token, at())).toBeUndefined()
		expect(await personOfSession('his', at())).toBe(of.cast().people.bakeryViewer.id)
		const due = await leaseMail(await of.as('system'), 1000, of.stamp())
		expect(due.filter(({ message, person }) => message === 'sign-in link' && person === id)).toEqual([])
	})

	test('the next sign-in is told of, with a browser that was known too, and with the very first', async () => {
		await signIn('here', { browser: 'the phone' })
		await out()
		await signIn('again', { browser: 'the phone' })
		expect(await notices()).toHaveLength(1)
		await signIn('once more', { browser: 'the phone' })
		expect(await notices()).toEqual([])
	})

	test('again and again, keeps no more than that somebody was here before', async () => {
		await signIn('here')
		for (const _ of [1, 2, 3]) await out()
		const rows = () => stranger(of.folder(), (sqlite) => sqlite.prepare('SELECT words FROM known_device').all())
		expect(rows()).toEqual([{ words: '' }])
		must('erase', await eraseClient(await of.as('designer'), of.cast().clients.bakery.id, of.stamp()))
		expect(rows()).toEqual([])
	})
})
