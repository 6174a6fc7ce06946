import { describe, expect, test } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { write } from '@/db/open'
import { enqueue } from '@/db/outbox/enqueue'
import { type Leased, leaseMail, type Outcome, settleMail } from '@/db/outbox/lease'
import { must } from '@/demo/play/must'
import { refused } from '../stage/rows'
import { found, later, stranger, studio } from '../stage/studio'

const of = studio()
const second = 1000
const minute = 60 * second
const at = (ms = 0) => of.stamp(later(of.cast().now, ms))

const lease = async (ms = 0, most = 100) => leaseMail(await of.as('system'), most, at(ms))
const settle = async (mail: Leased, outcome: Outcome, ms = 0) =>
	settleMail(await of.as('system'), mail, outcome, at(ms))
const rowOf = ({ id }: Leased) =>
	stranger(of.folder(), (sqlite) =>
		sqlite
			.prepare<[string], Record<string, unknown>>(
				'SELECT tries, leased_until, not_before, sent_at, dropped_at FROM outbox WHERE id = ?',
			)
			.get(id),
	)

/** One fresh mail; the twelve that the cast has left are sent. */
async function one(): Promise<Leased> {
	for (const other of await lease()) await settle(other, 'sent')
	const fresh = { message: 'reminder', person: of.cast().people.vetApprover.id, facts: { number: 1 } } as const
	write((tx) => enqueue(tx, of.stamp(), fresh))
	return found((await lease())[0])
}

describe('mail that is due', () => {
	test('comes with whom it is to, what it reports and how often it was tried', async () => {
		expect(await one()).toEqual({
			id: expect.any(String),
			message: 'reminder',
			person: of.cast().people.vetApprover.id,
			facts: { number: 1 },
			tries: 1,
		})
	})

	test('comes in the order in which it was written, no more than is asked for', async () => {
		const first = await lease(0, 5)
		const rest = await lease(0, 100)
		expect([first.length, rest.length]).toEqual([5, 7])
		const written = stranger(of.folder(), (sqlite) =>
			sqlite.prepare('SELECT id FROM outbox WHERE sent_at IS NULL ORDER BY created_at, id').pluck().all(),
		)
		expect([...first, ...rest].map(({ id }) => id)).toEqual(written)
	})

	test('of one moment comes in the order of its ids', async () => {
		write((tx) => {
			const stamp = of.stamp()
			for (const number of [1, 2, 3])
				enqueue(tx, stamp, { message: 'reminder', person: of.cast().people.vetApprover.id, facts: { number } })
		})
		const mine = (await lease()).filter(({ message }) => message === 'reminder')
		expect(mine.map(({ facts }) => facts)).toEqual([{ number: 1 }, { number: 2 }, { number: 3 }])
	})

	test('does not come before its time', async () => {
		expect(await lease(-40 * 24 * 60 * minute)).toEqual([])
	})
})

describe('a lease', () => {
	test('keeps all others away for a minute, and then no longer', async () => {
		const taken = await one()
		expect(await lease()).toEqual([])
		expect(await lease(minute - 1)).toEqual([])
		expect(await lease(minute)).toEqual([{ ...taken, tries: 2 }])
	})

	test('that ran out frees nothing any more: the next one stands', async () => {
		const slow = await one()
		await lease(minute)
		await refused(of.folder(), () => settle(slow, 'failed', minute + second))
		expect(await lease(2 * minute - 1)).toEqual([])
	})

	test('that ran out may still tell of what was sent', async () => {
		const slow = await one()
		await lease(minute)
		await settle(slow, 'sent', minute + second)
		expect(await lease(3 * minute)).toEqual([])
	})
})

describe('mail that failed', () => {
	test('waits longer each time, and an hour at most', async () => {
		const mail = await one()
		let [taken, now] = [mail, 0]
		const waits: number[] = []
		for (let times = 0; times < 10; times += 1) {
			await settle(taken, 'failed', now)
			const until = Date.parse(String(rowOf(mail)?.not_before)) - Date.parse(at(now).at)
			expect(await lease(now + until - 1)).toEqual([])
			now += until
			waits.push(until / second)
			taken = found((await lease(now))[0])
		}
		expect(waits).toEqual([30, 60, 120, 240, 480, 960, 1920, 3600, 3600, 3600])
		expect(taken.tries).toBe(11)
	})

	test('is free at once for the next who looks in its time', async () => {
		const mail = await one()
		await settle(mail, 'failed', second)
		expect(rowOf(mail)).toMatchObject({ leased_until: null, sent_at: null, dropped_at: null })
	})
})

describe('mail that was sent or dropped', () => {
	test.each([
		['sent', 'sent_at'],
		['dropped', 'dropped_at'],
	] as const)('%s comes never again', async (outcome, column) => {
		const mail = await one()
		await settle(mail, outcome, second)
		expect(rowOf(mail)).toMatchObject({ [column]: at(second).at, leased_until: null })
		expect(await lease(365 * 24 * 60 * minute)).toEqual([])
	})

	test.each([
		['sent', 'failed'],
		['sent', 'dropped'],
		['sent', 'sent'],
		['dropped', 'failed'],
		['dropped', 'sent'],
		['dropped', 'dropped'],
	] as const)('%s stays so, whatever a slow sender says later: %s', async (first, then) => {
		const mail = await one()
		await settle(mail, first, second)
		await refused(of.folder(), () => settle(mail, then, 5 * minute))
	})
})

describe('an erasure', () => {
	test('drops what was not sent, also what a sender holds; that sender is not stopped by it', async () => {
		const { dentalApprover, dentalViewer } = of.cast().people
		const mine = (await lease()).filter(({ person }) => person === dentalApprover.id || person === dentalViewer.id)
		expect(mine).toHaveLength(2)
		must('erase', await eraseClient(await of.as('designer'), of.cast().clients.dental.id, of.stamp()))
		for (const mail of mine) await refused(of.folder(), () => settle(mail, 'sent', second))
		expect(mine.map(rowOf)).toMatchObject([{ dropped_at: of.cast().now }, { dropped_at: of.cast().now }])
		const ids = mine.map(({ id }) => id)
		expect((await lease(minute)).filter(({ id }) => ids.includes(id))).toEqual([])
	})
})

describe('the outbox is the machinery’s alone', () => {
	test.each(['designer', 'helper', 'bakeryApprover', 'bakeryViewer', 'nobody'] as const)('not for %s', async (who) => {
		const [viewer, mail] = [await of.as(who), await one()]
		expect(await refused(of.folder(), () => leaseMail(viewer, 10, at(minute)))).toEqual([])
		await refused(of.folder(), () => settleMail(viewer, mail, 'sent', at()))
	})
})
