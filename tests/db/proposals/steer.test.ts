import { describe, expect, test } from 'vitest'
import { readOffer } from '@/db/proposals/read-offer'
import { type Steering, steer } from '@/db/proposals/steer'
import type { WinterKey } from '@/demo/cast/proposals/proposals'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import { cents } from '@/lib/units/cents'
import { id } from '@/lib/units/id'
import { changesOf, refused } from '../stage/rows'
import { fillDisk, stranger, studio } from '../stage/studio'
import { stepsOf } from './steps'

const of = studio()
const { idOf, page } = stepsOf(of)

const steering = (key: WinterKey, step: Steering['step'], change: Partial<Steering> = {}): Steering => ({
	proposal: idOf(key),
	step,
	reason: '',
	once: of.once(),
	...change,
})
const by = async (who: AnyPersonKey | 'nobody' | 'system', what: Steering) => steer(await of.as(who), what, of.stamp())

describe('a step of the studio’s own', () => {
	test.each([
		['bakery', 'withdraw', 'withdrawn', 'proposal withdrawn', 2],
		['chandlery', 'withdraw', 'withdrawn', 'proposal withdrawn', 1],
		['inn', 'withdraw', 'withdrawn', 'proposal withdrawn', 1],
		['creditUnion', 'reopen', 'drafting', 'proposal reopened', 1],
		['creditUnion', 'cancel', 'cancelled', 'proposal cancelled', 1],
		['approved', 'install', 'installed', 'proposal installed', 0],
	] as const)('%s: %s, to %s', async (key, step, state, act, mails) => {
		const what = steering(key, step)
		const { said, did } = await changesOf(of.folder(), () => by('designer', what))
		expect(said).toEqual({ ok: true })
		expect(did).toEqual({ event: '+1', once: '+1', proposal: '~1', ...(mails > 0 && { outbox: `+${mails}` }) })
		expect((await page(key)).state.is).toBe(state)
		const line = stranger(of.folder(), (sqlite) =>
			sqlite.prepare('SELECT act, object, client_id, facts, sealed FROM event ORDER BY seq DESC').get(),
		)
		const client = of.cast().clients[key].id
		const facts = step === 'cancel' ? '{"remains":0}' : '{}'
		expect(line).toEqual({ act, object: `proposal ${idOf(key)}`, client_id: client, facts, sealed: null })
	})

	test.each([
		['withdraw', 'inn', 'taken back', 'innApprover', 1],
		['reopen', 'approved', 'opened again', 'approvedApprover', 2],
		['cancel', 'approved', 'cancelled', 'approvedApprover', 2],
	] as const)('to %s %s is mailed as “%s” to %s, who may approve', async (step, key, message, to, number) => {
		must(key, await by('designer', steering(key, step)))
		const mails = stranger(of.folder(), (sqlite) =>
			sqlite.prepare('SELECT message, person_id, facts FROM outbox WHERE created_at = ?').all(of.cast().now),
		)
		const facts = JSON.stringify({ number, proposal: idOf(key) })
		expect(mails).toEqual([{ message, person_id: of.cast().people[to].id, facts }])
	})

	test('seals its reason', async () => {
		const reason = 'The awning comes down for repair until March.'
		const { did } = await changesOf(of.folder(), () => by('designer', steering('creditUnion', 'cancel', { reason })))
		expect(did).toEqual({ event: '+1', once: '+1', outbox: '+1', proposal: '~1', sealed_text: '+1' })
		const words = stranger(of.folder(), (sqlite) =>
			sqlite
				.prepare('SELECT body FROM sealed_text JOIN event ON sealed = sealed_text.hash ORDER BY seq DESC')
				.pluck()
				.get(),
		)
		expect(words).toBe(JSON.stringify({ reason }))
	})
})

describe('an approval that is cancelled', () => {
	const total = async () => (await page('creditUnion')).answer?.totalCents ?? 0

	test('keeps what remains due, from nothing to all that was approved, for the client to read', async () => {
		for (const part of [0, 0.25, 1]) {
			const remains = cents(Math.round((await total()) * part))
			await changesOf(of.folder(), () => by('designer', steering('creditUnion', 'cancel', { remains })))
			expect((await readOffer(await of.as('creditUnionApprover'), idOf('creditUnion'), of.stamp()))?.remains).toBe(
				remains,
			)
			stranger(of.folder(), (sqlite) => sqlite.exec("UPDATE proposal SET state = 'approved' WHERE state = 'cancelled'"))
		}
	})

	test('cannot leave more due than was approved', async () => {
		const remains = cents((await total()) + 1)
		const { said, did } = await changesOf(of.folder(), () =>
			by('designer', steering('creditUnion', 'cancel', { remains })),
		)
		expect([said, did]).toEqual([{ ok: false, why: 'more than was approved' }, {}])
	})

	test.each(['withdraw', 'install'] as const)('only then: %s leaves nothing due', async (step) => {
		const key = step === 'install' ? 'creditUnion' : 'bakery'
		must(key, await by('designer', steering(key, step, { remains: cents(500) })))
		expect((await page(key)).remains).toBeNull()
	})
})

describe('is refused by name, and nothing is written', () => {
	test.each([
		['bookshop', 'withdraw', 'nothing to withdraw'],
		['creditUnion', 'withdraw', 'nothing to withdraw'],
		['skipped', 'withdraw', 'nothing to withdraw'],
		['withdrawn', 'withdraw', 'nothing to withdraw'],
		['installed', 'withdraw', 'nothing to withdraw'],
		['bakery', 'reopen', 'not approved'],
		['bookshop', 'reopen', 'not approved'],
		['cancelled', 'reopen', 'not approved'],
		['installed', 'reopen', 'installed'],
		['chandlery', 'cancel', 'not approved'],
		['installed', 'cancel', 'installed'],
		['inn', 'install', 'not approved'],
		['cancelled', 'install', 'not approved'],
		['installed', 'install', 'installed'],
	] as const)('%s: %s, %s', async (key, step, why) => {
		expect(await refused(of.folder(), () => by('designer', steering(key, step)))).toEqual({ ok: false, why })
	})

	test('a form sent again after the next yes', async () => {
		const { once } = steering('approved', 'reopen')
		must('approved', await by('designer', steering('approved', 'reopen', { once })))
		const again = steering('creditUnion', 'cancel', { once })
		expect(await refused(of.folder(), () => by('designer', again))).toEqual({ ok: false, why: 'sent before' })
	})

	test.each(['helper', 'creditUnionApprover', 'bakeryApprover', 'nobody', 'system'] as const)('to %s', async (who) => {
		const what = steering('creditUnion', 'cancel')
		expect(await refused(of.folder(), () => by(who, what))).toEqual({ ok: false, why: 'hidden' })
	})

	test('of a proposal that is not there', async () => {
		const what = steering('bakery', 'withdraw', { proposal: id<'proposal'>('01999999-0000-7000-8000-00000000000a') })
		expect(await refused(of.folder(), () => by('designer', what))).toEqual({ ok: false, why: 'hidden' })
	})

	test.each(['once', 'sealed_text', 'event', 'outbox'])('when %s cannot be written', async (table) => {
		const what = steering('creditUnion', 'cancel', { reason: 'Paint.' })
		fillDisk(of.folder(), table)
		await refused(of.folder(), () => expect(by('designer', what)).rejects.toThrow('the disk is full'))
	})
})
