import { afterAll, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest'
import { remindLate } from '@/db/money/remind-late'
import { must } from '@/demo/play/must'
import { moneyOf } from '../../db/money/steps'
import { found, later, studio } from '../../db/stage/studio'
import { anew } from '../anew'
import { leaveNothing } from './leave-nothing'
import { type MailServer, openMailServer } from './mail-server'

// The mark of a bundler that has no server side: there is no bundler here.
vi.mock('server-only', () => ({}))

const of = studio()
const { account, byHand, pay, sayHowToPay } = moneyOf(of)
const inDays = (count: number) => count * 86_400_000
let server: MailServer

beforeAll(async () => {
	server = await openMailServer()
})
afterAll(() => server.close())
beforeEach(async () => {
	server.answer(() => null)
	await sayHowToPay()
	leaveNothing(of.folder())
	for (const list of [server.taken, server.subjects, server.mails]) list.length = 0
})

const round = (ms = 0) =>
	anew(later(of.cast().now, ms), { SMTP_URL: server.url, DATA_DIR: of.folder() }, async () => {
		const { sendDue } = await import('@/app/server/mail/sender')
		while ((await sendDue()) > 0);
	})
const oneMail = () => {
	expect(server.mails).toHaveLength(1)
	const { subject = '', text = '' } = found(server.mails[0])
	return { subject, text: text.replaceAll(/\s+/g, ' ') }
}

/** The one invoice of the practice: 951.31, due thirty days after the install of 14 September. */
async function asked() {
	await byHand('dental')
	const [invoice] = (await account('dental')).account.invoices
	return found(invoice)
}
/** Twelve days past 14 October. */
const pastDue = inDays(20)
async function reminded() {
	const { dental } = of.cast().clients
	const at = of.stamp(later(of.cast().now, pastDue))
	must('remind', await remindLate(await of.as('designer'), { client: dental.id, again: false }, at))
}

describe('a mail about money', () => {
	test('brings an invoice line by line to whoever may approve, with its day and how to pay', async () => {
		const { number } = await asked()
		await round()
		expect(server.taken).toEqual([of.cast().people.dentalApprover.address])
		const { subject, text } = oneMail()
		expect(subject).toBe(`Invoice ${number}: $951.31, due 14 October 2026`)
		expect(text).toContain('This is our invoice for autumn 2026.')
		expect(text).toContain('By check, to Reed & Lamp.')
		for (const line of ['Left planter: $415.00', 'Sales tax, 6.25 % of $650.18: $40.64', 'Total: $951.31'])
			expect(text).toContain(line)
		expect(text).toContain(`/invoice/${number}?for=`)
	})

	test('says on an invoice under which certificate no tax is asked for', async () => {
		await byHand('creditUnion')
		await round()
		const { text } = oneMail()
		expect(text).toContain('No sales tax: exempt, certificate EX-40217-W.')
		expect(text).not.toContain('Sales tax,')
	})

	test('reminds of what is late: which invoice, what is open of it, and since when', async () => {
		const { number } = await asked()
		await pay('dental', 50_000, { invoice: number })
		leaveNothing(of.folder())
		await reminded()
		await round(pastDue)
		const { subject, text } = oneMail()
		expect(subject).toBe('A reminder: $451.31 is past its day')
		expect(text).toContain(`Invoice ${number}: $451.31 open, 12 days past due.`)
		expect(text).toContain('please forget this mail')
		expect(text).toContain(`/home/${of.cast().clients.dental.id}/account?for=`)
	})

	test('reminds of nothing that was paid before the reminder went', async () => {
		const { cents } = await asked()
		leaveNothing(of.folder())
		await reminded()
		await pay('dental', cents)
		await round(pastDue)
		expect(server.subjects).toEqual(['We received $951.31, thank you'])
	})

	test.each([
		['in part', 50_000, false, 'We received $500.00, thank you', '$451.31 is open still.'],
		['in full', 95_131, false, 'We received $951.31, thank you', 'Nothing is open.'],
		['more', 96_000, true, 'We received $960.00, thank you', '$8.69 of it is kept as credit. Nothing is open.'],
	] as const)('thanks for a payment %s, and says where it leaves them', async (_, amount, keepRest, subject, says) => {
		await asked()
		leaveNothing(of.folder())
		must('pay', await pay('dental', amount, { keepRest, reference: 'Check 2207' }))
		await round()
		const mail = oneMail()
		expect(mail.subject).toBe(subject)
		expect(mail.text).toContain('Your payment came on 5 October 2026.')
		expect(mail.text).toContain(says)
		expect(mail.text).toMatch(/Reference\W+Check 2207/)
	})
})
