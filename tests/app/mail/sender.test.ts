import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest'
import { remind } from '@/db/proposals/remind'
import { verify } from '@/db/record/verify'
import { seasonPage } from '@/db/studio/season-page'
import { must } from '@/demo/play/must'
import type { Moment } from '@/lib/units/day'
import { stepsOf } from '../../db/proposals/steps'
import { found, later, stranger, studio } from '../../db/stage/studio'
import { anew } from '../anew'
import { leaveNothing } from './leave-nothing'
import { type MailServer, openMailServer } from './mail-server'

// The mark of a bundler that has no server side: there is no bundler here.
vi.mock('server-only', () => ({}))

const of = studio()
const { idOf, publish, steer } = stepsOf(of)
const hour = 3_600_000
const day = 24 * hour

let server: MailServer
beforeAll(async () => {
	server = await openMailServer()
})
afterAll(() => server.close())

/** One round of the sender in a process that starts anew, at that moment of the studio. */
const round = (moment: Moment) =>
	anew(moment, { SMTP_URL: server.url, LOG_FILE: logFile() }, async () => {
		const { sendDue } = await import('@/app/server/mail/sender')
		while ((await sendDue()) > 0);
	})

const logFile = () => join(of.folder(), 'site.log')
const log = () => readFileSync(logFile(), 'utf8')
const at = (ms = 0) => later(of.cast().now, ms)
const countOf = (sql: string) => stranger(of.folder(), (sqlite) => Number(sqlite.prepare(sql).pluck().get()))
const waiting = () => countOf('SELECT count(*) FROM outbox WHERE sent_at IS NULL AND dropped_at IS NULL')

/** What the cast has left to be sent is no matter of these tests. */
beforeEach(() => {
	server.answer(() => null)
	leaveNothing(of.folder())
	server.taken.length = 0
	server.subjects.length = 0
})

const again = async (ms = 0) => {
	const what = { proposal: idOf('vet'), again: true, once: of.once() }
	must('vet', await remind(await of.as('designer'), what, of.stamp(at(ms))))
}

/** Both who may answer for the vet. */
const approvers = () => [of.cast().people.vetApprover.address, of.cast().people.twoDoors.address]
const noMailbox = (address: string) => ({ responseCode: 550, says: `<${address}> unknown here` })
const rowOf = async () => {
	const ledger = await seasonPage(await of.as('designer'), { season: of.cast().seasons.winter, page: 1 }, of.stamp())
	return found(ledger?.rows.find(({ id }) => id === idOf('vet')))
}

describe('a mail server', () => {
	test('that puts off is asked again, and gets the mail once it takes it', async () => {
		await again()
		server.answer(() => ({ responseCode: 451, says: 'come back later' }))
		await round(at())
		expect([server.taken, waiting()]).toEqual([[], 2])
		server.answer(() => null)
		await round(at(hour))
		expect([server.taken, waiting()]).toEqual([approvers(), 0])
	})

	test('that names the address in its refusal does not bring it into the log', async () => {
		await again()
		server.answer((address) => ({ responseCode: 451, says: `<${address}> is greylisted` }))
		await round(at())
		expect(log()).toContain('"act":"mail failed"')
		expect(log()).toContain('"code":"EENVELOPE","responseCode":451')
		expect(log()).not.toMatch(/@|greylisted/)
	})

	test('that is down is asked again', async () => {
		await again()
		const { url } = server
		server = { ...server, url: 'smtp://127.0.0.1:1' }
		await round(at())
		server = { ...server, url }
		expect(log()).toContain('"code":"ESOCKET"')
		await round(at(hour))
		expect([server.taken, waiting()]).toEqual([approvers(), 0])
	})
})

describe('a mail that is refused for good', () => {
	test('is not tried again; the record tells of it, and the season’s row', async () => {
		await again()
		const tries = server.tries()
		server.answer(noMailbox)
		await round(at())
		await round(at(day))
		expect([server.tries() - tries, waiting(), server.taken]).toEqual([2, 0, []])
		expect(await rowOf()).toMatchObject({ undeliveredAt: expect.stringMatching(/^2026-10-06T16:00/) })
		const lines = stranger(of.folder(), (sqlite) =>
			sqlite.prepare("SELECT actor, object, client_id, facts FROM event WHERE act = 'mail did not arrive'").all(),
		)
		const told = { actor: 'system', object: `proposal ${idOf('vet')}`, client_id: of.cast().clients.vet.id }
		expect(lines).toEqual([
			{ ...told, facts: `{"message":"reminder","person":"${of.cast().people.vetApprover.id}"}` },
			{ ...told, facts: `{"message":"reminder","person":"${of.cast().people.twoDoors.id}"}` },
		])
		expect(log()).toContain('"act":"mail lost"')
		expect(log()).not.toMatch(/@|unknown here/)
		expect(await verify(await of.as('designer'))).toMatchObject({ broken: null })
	})

	test('to one address keeps none from the others', async () => {
		await again()
		const [gone, there] = approvers()
		server.answer((address) => (address === gone ? noMailbox(address) : null))
		await round(at())
		expect([server.taken, waiting()]).toEqual([[there], 0])
	})

	test('shows until the client is reminded once more', async () => {
		await again()
		server.answer(noMailbox)
		await round(at())
		await again(hour)
		expect(await rowOf()).toMatchObject({ undeliveredAt: null })
	})

	test('about a revision that does not stand any more is no trouble of the one that does', async () => {
		await again()
		server.answer(() => ({ responseCode: 451, says: 'later' }))
		await round(at())
		await publish('vet')
		stranger(of.folder(), (sqlite) =>
			sqlite.exec("UPDATE outbox SET dropped_at = created_at WHERE message = 'proposal published' AND sent_at IS NULL"),
		)
		server.answer(noMailbox)
		await round(at(hour))
		expect(await rowOf()).toMatchObject({ undeliveredAt: null })
	})
})

describe('after a while without a mail server', () => {
	test('only the latest of two reminders goes', async () => {
		await again()
		await again(hour)
		await round(at(2 * hour))
		expect(server.taken).toEqual(approvers())
	})

	test('nobody is asked for an answer that is not waited for any more: that it was taken back is all they hear', async () => {
		await again()
		await steer('vet', 'withdraw')
		await round(at(hour))
		expect([server.taken, server.subjects, waiting()]).toEqual([
			approvers(),
			approvers().map(() => expect.stringMatching(/^Taken back/)),
			0,
		])
	})

	test('nor after the day to answer by', async () => {
		await again()
		await round(at(2 * day))
		expect([server.taken, waiting()]).toEqual([[], 0])
	})
})
