import { describe, expect, test } from 'vitest'
import { endingOutlook } from '@/db/agreements/studio/end'
import { eraseClient } from '@/db/clients/erase'
import { inviteContact } from '@/db/clients/save-contact'
import { readInvoice } from '@/db/money/read-invoice'
import { readOffer } from '@/db/proposals/read-offer'
import { verify } from '@/db/record/verify'
import { must } from '@/demo/play/must'
import { chargeCents } from '@/lib/money/charge'
import { day } from '@/lib/units/day'
import { stepsOf } from '../proposals/steps'
import { changesOf } from '../stage/rows'
import { found, later, stranger, studio, utc } from '../stage/studio'
import { moneyOf } from './steps'

const of = studio()
const { idOf, steer } = stepsOf(of)
const { account, agree, byHand, byItself, end, numbers, pay, sayHowToPay } = moneyOf(of)
const days = (count: number) => later(of.cast().now, count * 86_400_000)
const nothing = { invoices: 0, credits: 0 }
const monthly = (count: number) => ({ is: 'every months', months: 1, count, start: { is: 'on approval' } }) as const

const invoiced = async (number: string) => {
	const page = await readInvoice(await of.as('designer'), number)
	if (!page.ok) throw new Error(number)
	return page.invoice
}
const agreeing = { client: 'bakery', by: 'bakeryApprover', containers: ['bakeryLeft', 'bakeryBox'] } as const

describe('by hand', () => {
	test('all that is owed is asked for, numbered without a gap, and nothing a second time', async () => {
		expect(await byHand()).toEqual({ ok: true, invoices: 22, credits: 0 })
		expect(numbers()).toEqual(Array.from({ length: 22 }, (_, index) => `2026-${String(index + 1).padStart(4, '0')}`))
		const again = await changesOf(of.folder(), () => byHand())
		expect([again.said, again.did]).toEqual([{ ok: true, ...nothing }, {}])
	})

	test('of an invoice: its row, its words, its entry, its line of the record, and a mail to each who may approve', async () => {
		const { did } = await changesOf(of.folder(), () => byHand('dental'))
		expect(did).toEqual({
			...{ invoice: '+1', invoice_asked: '+1', entry: '+1', event: '+1', outbox: '+1', sealed_text: '+1' },
		})
	})

	test('of an invoice whoever looks at money too is mailed, and whoever only looks is not', async () => {
		const { id: client } = of.cast().clients.dental
		const { name, address } = of.cast().people.dentalViewer
		const invitation = { client, name, address, may: 'pay' } as const
		must('invite', await inviteContact(await of.as('designer'), invitation, of.stamp()))
		const { did } = await changesOf(of.folder(), () => byHand('dental'))
		expect(did).toMatchObject({ outbox: '+2' })
	})

	test('a household that approved is asked for its deposit, and for its balance once the design is in', async () => {
		await byHand('approved')
		const before = await account('approved')
		const whole = found(
			(await readOffer(await of.as('designer'), idOf('approved'), of.stamp()))?.answer?.totalCents ?? undefined,
		)
		await steer('approved', 'install')
		await byHand('approved')
		const { account: after } = await account('approved')
		const winter = after.invoices.slice(before.account.invoices.length - 1)
		expect(winter.map(({ cents }) => cents).reduce((all, each) => all + each, 0)).toBe(whole)
		const [deposit, balance] = await Promise.all(winter.map(({ number }) => invoiced(number)))
		expect(deposit?.lines.map(({ words }) => words)).toEqual(['Deposit: Winter 2026–27'])
		expect(balance?.lines.at(-1)?.words).toBe(`Less the deposit, invoice ${deposit?.number}`)
	})

	test('a business that approved is asked for all of it after the install, net 30, with its purchase order and its certificate', async () => {
		await byHand('creditUnion')
		await steer('creditUnion', 'install')
		await byHand('creditUnion')
		const last = await invoiced(found(numbers().at(-1)))
		expect(last).toMatchObject({
			...{ purchaseOrder: 'PO-3318', exemptCertificate: 'EX-40217-W', tax: [], on: '2026-10-06', dueOn: '2026-11-05' },
			to: { name: 'Wrenholt Harbour Credit Union' },
		})
	})

	test('an approval that is opened again is credited, and verify still holds', async () => {
		await byHand('approved')
		await steer('approved', 'reopen', 'Other lights.')
		expect(await byHand('approved')).toEqual({ ok: true, invoices: 0, credits: 1 })
		const { account: after } = await account('approved')
		expect(after.invoices.at(-1)).toMatchObject({ leftCents: 0, openCents: 0 })
		expect(found(await verify(await of.as('designer'))).broken).toBeNull()
	})

	test('an erased client is asked for nothing; what was written stays, without its words', async () => {
		await byHand('dental')
		const { dental } = of.cast().clients
		await eraseClient(await of.as('designer'), dental.id, of.stamp())
		expect((await byHand()).ok).toBe(true)
		expect(await readInvoice(await of.as('designer'), '2026-0001')).toEqual({ ok: false, why: 'hidden' })
		expect(numbers()[0]).toBe('2026-0001')
		const { account: kept } = await account('dental')
		expect(kept.invoices).toHaveLength(1)
		expect(found(await verify(await of.as('designer'))).broken).toBeNull()
	})
})

describe('by itself', () => {
	test('nothing, before the studio has said how it is paid', async () => {
		expect(await byItself(days(60))).toBe(0)
	})

	test('what came to be owed since then, once; not what was owed before', async () => {
		await sayHowToPay()
		expect(await byItself()).toBe(0)
		await steer('creditUnion', 'install')
		expect(await byItself(days(1))).toBe(1)
		expect(await byItself(days(2))).toBe(0)
	})

	test('nobody but the house does it', async () => {
		await sayHowToPay()
		await steer('creditUnion', 'install')
		const { billDue } = await import('@/db/money/bills/bill-due')
		for (const who of ['designer', 'bakeryApprover', 'nobody'] as const)
			expect(await billDue(await of.as(who), of.stamp(days(1)))).toBe(0)
	})
})

describe('an agreement', () => {
	test('is billed by its instalments, each on its day, before tax as it was signed', async () => {
		await sayHowToPay()
		await agree({ ...agreeing, cents: 100_001, plan: monthly(3) })
		const sent: number[] = []
		for (const at of [0, 31, 62, 93]) {
			sent.push(await byItself(days(at)))
		}
		expect(sent).toEqual([1, 1, 1, 0])
		const all = await Promise.all(numbers().map(invoiced))
		expect(all.map(({ lines }) => lines.map(({ words, cents }) => [words, cents]))).toEqual([
			[['Instalment 1 of 3: Service agreement 2026–2027', 33_334]],
			[['Instalment 2 of 3: Service agreement 2026–2027', 33_334]],
			[['Instalment 3 of 3: Service agreement 2026–2027', 33_333]],
		])
		expect(all.map(({ tax }) => tax.map(({ milliPercent, baseCents }) => [milliPercent, baseCents]))).toEqual([
			[[6250, 33_334]],
			[[6250, 33_334]],
			[[6250, 33_333]],
		])
	})

	test('that ends tells what was paid of it, without the tax: the half of an instalment is half of it', async () => {
		await sayHowToPay()
		const agreement = await agree({ ...agreeing, cents: 100_000, plan: monthly(4) })
		await byItself()
		const { number, openCents } = found((await account('bakery')).account.invoices[0])
		expect(openCents).toBe(26_563)
		must('pay', await pay('bakery', 13_281, { invoice: number }))
		const ending = { on: day('2026-12-31'), saidOn: day('2026-10-06'), by: 'client', reason: 'They move.' } as const
		const says = found(await endingOutlook(await of.as('designer'), agreement, ending, of.stamp()))
		// 6.25 %: 132.81 with tax is 125.00 before it, half up.
		expect(says.join(' ')).toContain('before tax falls due in 3 instalments; $125.00 was paid, so $625.00 remains due.')
	})

	test('another rate of tax changes nothing of what was asked for', async () => {
		await sayHowToPay()
		await agree({ ...agreeing, cents: 90_000, plan: monthly(3) })
		await byItself()
		stranger(of.folder(), (sqlite) => sqlite.exec('UPDATE place SET tax_milli_percent = 1000'))
		expect(await byItself(days(31))).toBe(1)
		const [first, second] = await Promise.all(numbers().map(invoiced))
		expect([first?.tax[0]?.cents, second?.tax[0]?.cents]).toEqual([1875, 300])
	})

	test('that ends early asks for nothing after, and what was asked for too much is credited', async () => {
		await sayHowToPay()
		const id = await agree({ ...agreeing, cents: 90_000, plan: monthly(3) })
		await byItself(days(40))
		end(id, '2026-10-20')
		expect(await byItself(days(41))).toBe(1)
		expect(await byItself(days(100))).toBe(0)
		const { bills, account: after } = await account('bakery', days(100))
		expect(
			bills.filter(({ bill }) => bill.part.is === 'instalment').map(({ bill }) => chargeCents(bill.charge)),
		).toEqual([31_875])
		expect(after.openCents).toBe(31_875)
	})

	test('an instalment at a visit waits for it', async () => {
		await sayHowToPay()
		const plan = { is: 'per visit' } as const
		await agree({ ...agreeing, cents: 50_000, plan, season: { quarter: 'winter', year: 2026 } })
		expect(await byItself(days(30))).toBe(0)
		const { bills } = await account('bakery')
		expect(bills.find(({ bill }) => bill.part.is === 'instalment')?.bill.dated).toBeNull()
		const { clients, seasons } = of.cast()
		stranger(of.folder(), (sqlite) =>
			sqlite
				.prepare(
					"INSERT INTO visit (id, client_id, season_id, kind, state, day, came, client_note, studio_note, reported, created_at, done_at) VALUES (?, ?, ?, 'install', 'done', '2026-10-20', '', '', '', '', ?, ?)",
				)
				.run(of.stamp().id(), clients.bakery.id, seasons.winter, of.cast().now, of.cast().now),
		)
		expect(await byItself(days(30))).toBe(1)
	})
})

test('a season is refused an approval that would bill it beside its agreement, and nothing is written', async () => {
	const { approve } = await import('@/db/proposals/answers/approve')
	const { answering } = stepsOf(of)
	await agree({ ...agreeing, cents: 50_000, plan: monthly(1), season: { quarter: 'winter', year: 2026 } })
	const approval = {
		...(await answering('bakery')),
		option: 'a',
		places: {},
		extras: [],
		leftOut: [],
		purchaseOrder: '',
	}
	const { said, did } = await changesOf(of.folder(), async () =>
		approve(await of.as('bakeryApprover'), approval, of.stamp()),
	)
	expect([said, did]).toEqual([{ ok: false, why: 'billed by the agreement' }, {}])
})

test('the clock of the books may not go back a year', async () => {
	await byHand('dental')
	await expect(byHand('bakery', utc('2025-12-30T12:00:00'))).resolves.toEqual({ ok: true, ...nothing })
})
