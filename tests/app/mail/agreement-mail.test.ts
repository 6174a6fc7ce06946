import { afterAll, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest'
import { declineAgreement } from '@/db/agreements/signing/decline'
import { endAgreement, takeBackAgreement } from '@/db/agreements/studio/end'
import { remindSigner } from '@/db/agreements/studio/remind'
import { must } from '@/demo/play/must'
import { day } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import { signingOf } from '../../db/stage/agreement'
import { found, later, studio } from '../../db/stage/studio'
import { anew } from '../anew'
import { leaveNothing } from './leave-nothing'
import { type MailServer, openMailServer } from './mail-server'

// The mark of a bundler that has no server side: there is no bundler here.
vi.mock('server-only', () => ({}))

const of = studio()
const { amend, issued, page, ready, sign } = signingOf(of)
const maud = 'bakeryApprover'
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
const letterWith = (subject: string) => found(server.mails.find((mail) => mail.subject === subject))

describe('a mail about an agreement', () => {
	test('asks each who may sign, with the way there and no amount', async () => {
		const id = await issued('bakery')
		await round()
		expect(server.subjects).toEqual(['Your agreement for 2026–27', 'Your agreement for 2026–27'])
		const { text = '', html } = letterWith('Your agreement for 2026–27')
		for (const part of [text, html || '']) {
			expect(part).toContain(`/agreement/${id}?for=`)
			expect(part).toContain('Friday 20 November')
			expect(part).not.toMatch(/\$\d/)
		}
	})

	test('asks for the changed one alone, once it was changed', async () => {
		const id = await issued('bakery')
		await amend(id, 'bakery')
		await round()
		expect(server.subjects).toEqual(['Your agreement for 2026–27, changed', 'Your agreement for 2026–27, changed'])
	})

	test('tells both sides of a signature: who, when, the text’s hash and the head of the record', async () => {
		const id = await issued('bakery')
		must('sign', await sign(maud, await ready(id, maud)))
		await round()
		expect(server.subjects.toSorted()).toEqual([
			'Marrowby Bakery signed',
			'Signed: your agreement for 2026–27',
			'Signed: your agreement for 2026–27',
		])
		const { hash } = await page(id)
		for (const subject of ['Marrowby Bakery signed', 'Signed: your agreement for 2026–27']) {
			const { text = '' } = letterWith(subject)
			expect(text).toContain('Maud Marrowby')
			expect(text).toContain(hash)
			expect(text).toMatch(/Record, line \d+:\s+[0-9a-f]{64}/)
		}
	})

	test('tells the studio why it was declined', async () => {
		const id = await issued('bakery')
		leaveNothing(of.folder())
		const declining = { agreement: id, document: (await page(id)).hash, once: of.once(), browser: 'Firefox' }
		const reason = 'We are closing the shop.'
		must('decline', await declineAgreement(await of.as(maud), { ...declining, reason }, of.stamp()))
		await round()
		expect(server.subjects).toEqual(['Marrowby Bakery declines the agreement'])
		expect(letterWith('Marrowby Bakery declines the agreement').text).toContain(`“${reason}”`)
	})

	describe('asks once more', () => {
		const remind = async (agreement: Id<'agreement'>) =>
			must(
				'remind',
				await remindSigner(await of.as('designer'), { agreement, again: true, once: of.once() }, of.stamp()),
			)
		const waits = 'Your agreement for 2026–27 waits for your name'

		test('each who may sign, with the day and the way there and no amount', async () => {
			const id = await issued('bakery')
			leaveNothing(of.folder())
			await remind(id)
			await round()
			expect(server.subjects).toEqual([waits, waits])
			const { text = '', html } = letterWith(waits)
			for (const part of [text, html || '']) {
				expect(part).toContain('Marrowby Bakery still waits for your signature')
				expect(part).toContain('Friday 20 November')
				expect(part).toContain(`/agreement/${id}?for=`)
				expect(part).not.toMatch(/\$\d/)
			}
		})

		test('nobody, where it was signed before the reminder went', async () => {
			const id = await issued('bakery')
			leaveNothing(of.folder())
			await remind(id)
			must('sign', await sign(maud, await ready(id, maud)))
			await round()
			expect(server.subjects).not.toContain(waits)
			expect(server.subjects).toHaveLength(3)
		})
	})

	test('says that it was taken back, and that there is nothing to sign', async () => {
		const id = await issued('bakery')
		leaveNothing(of.folder())
		must('take back', await takeBackAgreement(await of.as('designer'), { agreement: id, once: of.once() }, of.stamp()))
		await round()
		const subject = 'Taken back: your agreement for 2026–27'
		expect(server.subjects).toEqual([subject, subject])
		const { text = '' } = letterWith(subject)
		expect(text).toContain('We have taken back the agreement for Marrowby Bakery. There is nothing to sign.')
		expect(text).toContain(`/agreement/${id}?for=`)
	})

	test('says on which day it ends, what stays due and how to object, and keeps the reason out', async () => {
		const id = await issued('bakery')
		must('sign', await sign(maud, await ready(id, maud)))
		leaveNothing(of.folder())
		const ending = {
			on: day('2027-05-31'),
			saidOn: day('2026-10-06'),
			by: 'studio',
			reason: 'The van is sold.',
		} as const
		const ended = await endAgreement(await of.as('designer'), { agreement: id, ending, once: of.once() }, of.stamp())
		must('end', ended)
		await round()
		const subject = 'Ended: your agreement for 2026–27'
		expect(server.subjects).toEqual([subject, subject])
		const { text = '' } = letterWith(subject)
		expect(text).toContain('ends on 31 May 2027')
		expect(text).toContain('What falls due until then remains due')
		expect(text).toContain('Answer this mail.')
		expect(text).not.toContain(ending.reason)
	})
})
