import { afterAll, beforeAll, expect, test } from 'vitest'
import { keepToken } from '@/db/sign-in/token'
import { sha256 } from '@/lib/record/hash'
import { moneyOf } from '../money/steps'
import { stepsOf } from '../proposals/steps'
import { rowsIn } from '../stage/rows'
import { later, stranger, studio } from '../stage/studio'
import { type Racers, racers } from './racers'

const of = studio()
const { idOf, page, publish, steer } = stepsOf(of)
const rounds = 20

let two: Racers
beforeAll(async () => {
	two = await racers(2)
})
afterAll(() => two.end())

const count = (sql: string, ...values: string[]) =>
	stranger(of.folder(), (sqlite) =>
		sqlite
			.prepare<string[], number>(sql)
			.pluck()
			.get(...values),
	)

test('two approve the same revision at the same moment: one answer, and the other is told', async () => {
	const { bakeryApprover, bakerySecondApprover } = of.cast().people
	for (let round = 1; round <= rounds; round += 1) {
		const { hash: revision } = await page('bakery')
		const command = { does: 'approve', now: of.cast().now, proposal: idOf('bakery'), revision } as const
		const said = await two.race(
			of.folder(),
			{ ...command, person: bakeryApprover.id, once: of.once() },
			{ ...command, person: bakerySecondApprover.id, once: of.once() },
		)
		expect(said).toContainEqual({ ok: true, reference: expect.any(String) })
		expect(said).toContainEqual({ ok: false, why: 'already approved' })
		expect(count('SELECT count(*) FROM answer WHERE revision_hash = ?', revision)).toBe(1)
		expect(count("SELECT count(*) FROM event WHERE act = 'proposal approved' AND facts LIKE ?", `%${revision}%`)).toBe(
			1,
		)
		// One to each of the three contacts, one to the designer.
		const mails = "SELECT count(*) FROM outbox WHERE message IN ('approved', 'approval received') AND facts = ?"
		expect(count(mails, JSON.stringify({ number: round, proposal: idOf('bakery') }))).toBe(4)
		await steer('bakery', 'reopen')
		await publish('bakery')
	}
})

test('a link that two press at the same moment lets one in', async () => {
	const { id, address } = of.cast().people.bakeryApprover
	for (let round = 1; round <= rounds; round += 1) {
		const token = sha256(`link ${round}`)
		const [codeHash, askHash] = [sha256(`code ${round}`), sha256(`browser ${round}`)]
		await keepToken(id, { linkHash: token, codeHash, askHash }, new Date(of.cast().now))
		const command = { does: 'use the link', now: of.cast().now, token } as const
		const said = await two.race(of.folder(), command, command)
		expect(said).toContainEqual(expect.objectContaining({ identifier: address }))
		expect(said).toContainEqual(null)
	}
})

test('two senders that look for mail at the same moment never take the same', async () => {
	const unsent = (rowsIn(of.folder()).outbox ?? []).filter((row) => row.endsWith('null,null]'))
	for (let round = 1; round <= rounds; round += 1) {
		const command = { does: 'lease', now: later(of.cast().now, round * 61_000), most: 5 } as const
		const said = await two.race(of.folder(), command, command)
		expect(new Set(said.flat()).size).toBe(10)
	}
	expect(unsent).toHaveLength(12)
})

test('two processes that bill at the same moment ask for everything once, without a gap in the numbers', async () => {
	const { sayHowToPay, numbers } = moneyOf(of)
	await sayHowToPay()
	stranger(of.folder(), (sqlite) =>
		sqlite.exec("DROP TRIGGER event_no_update; UPDATE event SET facts = replace(facts, '2026-10-06', '2026-01-01')"),
	)
	const command = { does: 'bill', now: of.cast().now } as const
	const said = await two.race(of.folder(), command, command)
	const both = said.map(Number).reduce((all, each) => all + each, 0)
	expect(both).toBe(22)
	expect(numbers()).toEqual(Array.from({ length: both }, (_, index) => `2026-${String(index + 1).padStart(4, '0')}`))
	expect(count('SELECT count(DISTINCT bill) FROM invoice')).toBe(both)
})
