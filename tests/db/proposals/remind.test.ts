import { describe, expect, test } from 'vitest'
import { type Reminding, remind } from '@/db/proposals/remind'
import type { WinterKey } from '@/demo/cast/proposals/proposals'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import { changesOf, refused } from '../stage/rows'
import { fillDisk, stranger, studio, utc } from '../stage/studio'
import { stepsOf } from './steps'

const of = studio()
const { idOf } = stepsOf(of)

const reminding = (key: WinterKey, change: Partial<Reminding> = {}): Reminding => ({
	proposal: idOf(key),
	again: false,
	once: of.once(),
	...change,
})
const by = async (who: AnyPersonKey | 'nobody' | 'system', what: Reminding, at = of.cast().now) =>
	remind(await of.as(who), what, of.stamp(at))

describe('a reminder', () => {
	test('is one line and a mail to each who may approve, not to who looks', async () => {
		const { said, did } = await changesOf(of.folder(), () => by('designer', reminding('bakery')))
		expect(said).toEqual({ ok: true })
		expect(did).toEqual({ event: '+1', once: '+1', outbox: '+2', proposal: '~1' })
		const to = stranger(of.folder(), (sqlite) =>
			sqlite
				.prepare("SELECT person_id FROM outbox WHERE message = 'reminder' AND created_at = ?")
				.pluck()
				.all(of.cast().now),
		)
		const { bakeryApprover, bakerySecondApprover } = of.cast().people
		expect(to.toSorted()).toEqual([bakeryApprover.id, bakerySecondApprover.id].toSorted())
	})
})

describe('a reminder that was not sent yet', () => {
	test('makes room for the next; those of another proposal stay', async () => {
		must('vet', await by('designer', reminding('vet', { again: true })))
		must('bakery', await by('designer', reminding('bakery')))
		const { did } = await changesOf(of.folder(), () => by('designer', reminding('bakery', { again: true })))
		expect(did).toEqual({ event: '+1', once: '+1', outbox: '+2 ~2' })
	})
})

// The vet is to answer by the 7th; the reminder of the cast went on the 5th at 14:30 UTC.
describe('twice within two days', () => {
	const last = '2026-10-05T14:30:00.000Z'

	test.each(['2026-10-05T14:30:00.001', '2026-10-06T16:00', '2026-10-07T14:29:59.999'])(
		'at %s asks whether it is meant',
		async (at) => {
			const said = await refused(of.folder(), () => by('designer', reminding('vet'), utc(at)))
			expect(said).toEqual({ ok: false, why: 'reminded lately', at: last })
		},
	)

	test('goes when it is meant', async () => {
		expect(await by('designer', reminding('vet', { again: true }))).toEqual({ ok: true })
		const said = await by('designer', reminding('vet'))
		expect(said).toMatchObject({ why: 'reminded lately', at: of.cast().now })
	})

	test('and from two days on without a question', async () => {
		expect(await by('designer', reminding('vet'), utc('2026-10-07T14:30'))).toEqual({ ok: true })
	})
})

describe('goes to those alone who are waited for', () => {
	test.each(['bookshop', 'inn', 'creditUnion', 'skipped', 'chandlery', 'withdrawn', 'cancelled', 'installed'] as const)(
		'not to %s',
		async (key) => {
			const said = await refused(of.folder(), () => by('designer', reminding(key, { again: true })))
			expect(said).toEqual({ ok: false, why: 'not waiting for them' })
		},
	)

	test('not after the day to answer by', async () => {
		const what = reminding('vet', { again: true })
		const said = await refused(of.folder(), () => by('designer', what, utc('2026-10-08T04:00')))
		expect(said).toEqual({ ok: false, why: 'not waiting for them' })
	})

	test('once for a form', async () => {
		const what = reminding('bakery', { again: true })
		must('bakery', await by('designer', what))
		expect(await refused(of.folder(), () => by('designer', what))).toEqual({ ok: false, why: 'sent before' })
	})

	test.each(['helper', 'bakeryApprover', 'bakeryViewer', 'dentalApprover', 'nobody', 'system'] as const)(
		'not for %s',
		async (who) => {
			expect(await refused(of.folder(), () => by(who, reminding('bakery')))).toEqual({ ok: false, why: 'hidden' })
		},
	)

	test.each(['once', 'event', 'outbox'])('leaves nothing when %s cannot be written', async (table) => {
		fillDisk(of.folder(), table)
		const what = reminding('bakery')
		await refused(of.folder(), () => expect(by('designer', what)).rejects.toThrow('the disk is full'))
	})
})
