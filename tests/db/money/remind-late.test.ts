import { describe, expect, test } from 'vitest'
import { readLate, readMoney } from '@/db/money/read-money'
import { remindAllLate, remindLate, remindLateDue } from '@/db/money/remind-late'
import { changesOf, refused } from '../stage/rows'
import { found, later, studio } from '../stage/studio'
import { moneyOf } from './steps'

const of = studio()
const { byHand, pay } = moneyOf(of)
const days = (count: number) => later(of.cast().now, count * 86_400_000)
const byHandTo = async (again = false, at = of.cast().now) =>
	remindLate(await of.as('designer'), { client: of.cast().clients.dental.id, again }, of.stamp(at))
const byItself = async (at: number) => remindLateDue(await of.as('system'), of.stamp(days(at)))
const late = async (at: number) => found(await readLate(await of.as('designer'), of.stamp(days(at)))).late

describe('who is late', () => {
	test('nobody, before the day has passed', async () => {
		await byHand('dental')
		expect((await late(0)).clients).toEqual([])
		expect(await refused(of.folder(), () => byHandTo())).toEqual({ ok: false, why: 'not past due' })
	})

	test('by how long, in the bands, until it is paid', async () => {
		await byHand('dental')
		const bandsOn = async (at: number) => (await late(at)).byBand
		expect(await bandsOn(20)).toMatchObject({ '1 to 30 days': 95_131, 'not due yet': 0 })
		expect(await bandsOn(60)).toMatchObject({ '31 to 60 days': 95_131, '1 to 30 days': 0 })
		await pay('dental', 95_131)
		expect((await late(60)).lateCents).toBe(0)
	})
})

describe('a reminder', () => {
	test('by hand goes to who may approve, and again within two days only when that is said', async () => {
		await byHand('dental')
		const { said, did } = await changesOf(of.folder(), () => byHandTo(false, days(40)))
		expect([said, did]).toEqual([{ ok: true }, { event: '+1', invoice_asked: '~1', outbox: '+1' }])
		expect(await byHandTo(false, days(41))).toEqual({ ok: false, why: 'reminded lately' })
		expect(await byHandTo(true, days(41))).toEqual({ ok: true })
	})

	test('by itself goes a week after the day, then as each later band begins, and never twice', async () => {
		await byHand('dental')
		const sent: number[] = []
		for (let at = 0; at <= 130; at += 1) if ((await byItself(at)) > 0) sent.push(at)
		expect(sent.map((at, index) => at - (sent[index - 1] ?? at))).toEqual([0, 24, 30, 30])
	})

	test('to all who are late, but not to whom it went yesterday', async () => {
		await byHand()
		const all = async (at: number) => remindAllLate(await of.as('designer'), of.stamp(days(at)))
		const { clients } = await late(40)
		expect(await all(40)).toEqual({ ok: true, reminded: clients.length })
		expect(await all(41)).toEqual({ ok: true, reminded: 0 })
	})
})

test('the money page shows each client with what is open and what is to be asked for next', async () => {
	await byHand('dental')
	const page = found(await readMoney(await of.as('designer'), of.stamp()))
	const row = (id: string) => found(page.clients.find((each) => each.id === id))
	const { dental, approved } = of.cast().clients
	expect(row(dental.id)).toMatchObject({ account: { openCents: 95_131 }, remindedAt: null })
	expect(row(approved.id).bills.map(({ bill, isWanting }) => [bill.part.is, isWanting])).toEqual([
		['deposit', true],
		['balance', true],
		['deposit', true],
		['balance', false],
	])
})
