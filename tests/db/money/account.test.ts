import { describe, expect, test } from 'vitest'
import { creditInvoice } from '@/db/money/acts/credit'
import { refund } from '@/db/money/acts/refund'
import { undoEntry } from '@/db/money/acts/undo'
import { writeOff } from '@/db/money/acts/write-off'
import { verify } from '@/db/record/verify'
import { isInvoiceNumber } from '@/lib/money/invoice/number'
import { balanceOf } from '@/lib/money/ledger/effect'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { changesOf, refused } from '../stage/rows'
import { found, stranger, studio } from '../stage/studio'
import { moneyOf } from './steps'

const of = studio()
const { account, byHand, pay } = moneyOf(of)
const dental = () => of.cast().clients.dental.id
const designer = () => of.as('designer')

/** The one invoice of the practice: 951.31. */
async function asked() {
	await byHand('dental')
	const { account: stands } = await account('dental')
	const [first] = stands.invoices
	return found(first)
}

describe('a payment', () => {
	test('in part and then in full', async () => {
		const { number } = await asked()
		const first = await changesOf(of.folder(), () => pay('dental', 50_000, { invoice: number }))
		expect([first.said, first.did]).toEqual([
			{ ok: true },
			{ entry: '+1', event: '+1', outbox: '+1', sealed_text: '+1' },
		])
		expect((await account('dental')).account.invoices[0]).toMatchObject({ paidCents: 50_000, openCents: 45_131 })
		expect(await pay('dental', 45_131)).toEqual({ ok: true })
		expect((await account('dental')).account).toMatchObject({ openCents: 0, creditCents: 0 })
	})

	test.each([
		['more than is due', 95_132, {}, 'more than is due'],
		['dated ahead', 100, { on: day('2026-10-07') }, 'dated ahead'],
		['for an invoice of nobody', 100, { invoice: '2026-0099' }, 'no such invoice'],
	] as const)('%s is refused', async (_, amount, rest, why) => {
		await asked()
		const { invoice, ...more } = { invoice: null, ...rest }
		const number = invoice === null || !isInvoiceNumber(invoice) ? null : invoice
		expect(await refused(of.folder(), () => pay('dental', amount, { ...more, invoice: number }))).toEqual({
			ok: false,
			why,
		})
	})

	test('for the invoice of another client is told as for none', async () => {
		await asked()
		await byHand('bakery')
		const [theirs] = (await account('bakery')).account.invoices
		const said = await refused(of.folder(), () => pay('dental', 100, { invoice: found(theirs).number }))
		expect(said).toEqual({ ok: false, why: 'no such invoice' })
	})

	test.each([0, -100])('of %i is a broken promise', async (amount) => {
		await asked()
		await expect(pay('dental', amount)).rejects.toThrow('is not above zero')
	})

	test('more than is due is kept where that is said, and goes back as a refund of no more', async () => {
		await asked()
		expect(await pay('dental', 100_000, { keepRest: true })).toEqual({ ok: true })
		expect((await account('dental')).account.creditCents).toBe(4869)
		const back = { client: dental(), on: day('2026-10-06'), means: 'check', reference: '7' } as const
		const give = async (amount: number) => refund(await designer(), { ...back, cents: cents(amount) }, of.stamp())
		expect(await give(4870)).toEqual({ ok: false, why: 'more than their credit' })
		expect(await give(4869)).toEqual({ ok: true })
		expect((await account('dental')).account).toMatchObject({ creditCents: 0, openCents: 0 })
	})
})

describe('what is put right', () => {
	test('a payment that was a mistake is undone, once', async () => {
		await asked()
		await pay('dental', 50_000)
		const entry = found((await account('dental')).ledger.at(-1)).id
		const undo = async () =>
			undoEntry(await designer(), { client: dental(), entry, reason: 'Of another client.' }, of.stamp())
		expect(await undo()).toEqual({ ok: true })
		expect(await undo()).toEqual({ ok: false, why: 'undone already' })
		expect((await account('dental')).account.openCents).toBe(95_131)
	})

	test('an invoice is credited in part, then what is open of it written off, and nothing more', async () => {
		const { number } = await asked()
		const crediting = { client: dental(), invoice: number, reason: 'One pot was missing.' }
		const credit = async (amount: number) =>
			creditInvoice(await designer(), { ...crediting, cents: cents(amount) }, of.stamp())
		expect(await credit(30_000)).toEqual({ ok: true })
		const off = async (amount: number) =>
			writeOff(
				await designer(),
				{ client: dental(), invoice: number, cents: cents(amount), reason: 'Closed down.' },
				of.stamp(),
			)
		expect(await off(65_132)).toEqual({ ok: false, why: 'more than is open' })
		expect(await off(65_131)).toEqual({ ok: true })
		expect(await credit(1)).toEqual({ ok: false, why: 'more than is left of the invoice' })
		const { account: stands, ledger } = await account('dental')
		expect([stands.openCents, stands.creditCents, balanceOf(ledger)]).toEqual([0, 0, 0])
		expect(await byHand('dental')).toEqual({ ok: true, invoices: 0, credits: 0 })
	})

	test('an invoice is not undone', async () => {
		await asked()
		const [first] = (await account('dental')).ledger
		const undoing = { client: dental(), entry: found(first).id, reason: 'Wrong.' }
		expect(await undoEntry(await designer(), undoing, of.stamp())).toEqual({
			ok: false,
			why: 'corrected by a credit note',
		})
	})
})

describe('the record', () => {
	test('tells of each, and holds', async () => {
		const { number } = await asked()
		await pay('dental', 50_000)
		await creditInvoice(
			await designer(),
			{ client: dental(), invoice: number, cents: cents(100), reason: 'A cent.' },
			of.stamp(),
		)
		expect(found(await verify(await designer())).broken).toBeNull()
	})

	test.each([
		[
			'an entry that no line tells of',
			"INSERT INTO entry SELECT seq + 9, 'another', client_id, 'payment', on_day, 5, NULL, NULL, 'cash', NULL, NULL, at, \"by\" FROM entry LIMIT 1",
			'No line tells of the entry another.',
		],
		[
			'an invoice that comes to another amount',
			'DROP TRIGGER invoice_no_update; UPDATE invoice SET total_cents = 1',
			'the evidence says otherwise',
		],
		['an entry that is gone', 'DROP TRIGGER entry_no_delete; DELETE FROM entry', 'the evidence says otherwise'],
		[
			'a payment of another amount',
			"DROP TRIGGER entry_no_update; UPDATE entry SET cents = 1 WHERE is_a = 'payment'",
			'the evidence says otherwise',
		],
	])('finds %s', async (_, sql, why) => {
		await asked()
		await pay('dental', 50_000)
		stranger(of.folder(), (sqlite) => sqlite.exec(sql))
		expect(found(await verify(await designer())).broken).toMatchObject({ why })
	})
})
