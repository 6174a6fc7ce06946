import { afterAll, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest'
import { clientPage } from '@/db/clients/read-clients'
import { sessionAdapter } from '@/db/sign-in/adapter'
import { askForLink } from '@/db/sign-in/ask'
import { changeAddress } from '@/db/sign-in/change-address'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import { sha256 } from '@/lib/record/hash'
import { found, later, stranger, studio } from '../../db/stage/studio'
import { anew } from '../anew'
import { leaveNothing } from './leave-nothing'
import { type MailServer, openMailServer } from './mail-server'

// The mark of a bundler that has no server side: there is no bundler here.
vi.mock('server-only', () => ({}))

const of = studio()
const fresh = 'maud@elsewhere.example'
let server: MailServer

beforeAll(async () => {
	server = await openMailServer()
})
afterAll(() => server.close())
beforeEach(() => {
	server.answer(() => null)
	leaveNothing(of.folder())
	for (const list of [server.taken, server.subjects, server.mails]) list.length = 0
})

const round = (ms = 0) =>
	anew(later(of.cast().now, ms), { SMTP_URL: server.url, DATA_DIR: of.folder() }, async () => {
		const { sendDue } = await import('@/app/server/mail/sender')
		while ((await sendDue()) > 0);
	})

function signIn(browser: string, words: string, who: AnyPersonKey = 'bakeryApprover') {
	const arrival = { browser, words, by: 'link', stamp: of.stamp() } as const
	const userId = of.cast().people[who].id
	return sessionAdapter(() => new Date(of.cast().now), arrival).createSession({ sessionToken: browser, userId })
}

async function move(): Promise<void> {
	const client = of.cast().clients.bakery.id
	const { contacts } = found(await clientPage(await of.as('designer'), client))
	const { address } = of.cast().people.bakeryApprover
	const contact = found(contacts.find((each) => each.address === address)).id
	must('move', await changeAddress(await of.as('designer'), { client, contact, address: fresh }, of.stamp()))
}

const handleOf = (id: string) =>
	stranger(of.folder(), (sqlite) =>
		found(sqlite.prepare<[string], string>('SELECT handle FROM person WHERE id = ?').pluck().get(id)),
	)
const letter = () => {
	const { subject = '', text = '', html } = found(server.mails[0])
	return { subject, text, html: html || '' }
}

describe('a sign-in with another browser', () => {
	test.each(['bakeryApprover', 'designer', 'helper'] as const)(
		'is told to %s: when, with what, where to end it',
		async (who) => {
			const { address, id, name } = of.cast().people[who]
			await signIn('the phone', 'Safari on an iPhone', who)
			await signIn('at the till', 'Edge on Windows', who)
			await round()
			expect([server.taken, server.subjects]).toEqual([[address], ['You signed in with another browser']])
			const { text, html } = letter()
			expect(text).toContain(`Dear ${name},`)
			expect(text).toMatch(/Browser: +Edge on Windows\nWhen: +6 October 2026, \d\d:\d\d, by the studio’s clock/)
			expect(text).toContain(`See where you are signed in:\nhttp://127.0.0.1:3000/devices?for=${handleOf(id)}\n`)
			expect(text).not.toContain('iPhone')
			expect(html).toContain('Edge on Windows')
			expect(html).toContain(`href="http://127.0.0.1:3000/devices?for=${handleOf(id)}"`)
		},
	)

	test('is told to nobody of the first', async () => {
		await signIn('the phone', 'Safari on an iPhone')
		await round()
		expect(server.taken).toEqual([])
	})
})

describe('an address that was changed', () => {
	test('is told to the old one, which is told no other and led nowhere by name', async () => {
		const { address, name, id } = of.cast().people.bakeryApprover
		await move()
		await round()
		expect([server.taken, server.subjects]).toEqual([[address], ['Your mail address was changed']])
		const { text, html } = letter()
		expect(text).toContain(`Dear ${name},`)
		expect(text).toMatch(/When: +6 October 2026, \d\d:\d\d, by the studio’s clock/)
		expect(text).toContain('Go to the site:\nhttp://127.0.0.1:3000/sign-in\n')
		for (const hidden of [fresh, handleOf(id)]) for (const part of [text, html]) expect(part).not.toContain(hidden)
	})

	test('is told again where the first try failed, and forgotten once it was', async () => {
		const facts = () =>
			stranger(of.folder(), (sqlite) =>
				sqlite.prepare("SELECT facts FROM outbox WHERE message = 'address changed'").pluck().get(),
			)
		const { address } = of.cast().people.bakeryApprover
		await move()
		server.answer(() => ({ responseCode: 451, says: 'come back later' }))
		await round()
		expect([server.taken, String(facts()).includes(address)]).toEqual([[], true])
		server.answer(() => null)
		await round(3_600_000)
		expect([server.taken, String(facts()).includes(address)]).toEqual([[address], false])
	})

	test('asks for its links by the new one, and a link that was asked for before is sent to neither', async () => {
		const { address } = of.cast().people.bakeryApprover
		const asked = { askHash: sha256('a browser'), to: '/home' }
		await askForLink({ address, ...asked }, of.stamp())
		await move()
		await askForLink({ address, ...asked }, of.stamp())
		await askForLink({ address: fresh, ...asked }, of.stamp())
		await round()
		expect(server.taken.toSorted()).toEqual([fresh, address].toSorted())
		expect(server.subjects.toSorted()).toEqual(['Your link to sign in', 'Your mail address was changed'])
	})
})
