import { describe, expect, test } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { remindDue } from '@/db/house/remind-due'
import { remind } from '@/db/proposals/remind'
import type { WinterKey } from '@/demo/cast/proposals/proposals'
import { must } from '@/demo/play/must'
import type { Moment } from '@/lib/units/day'
import { stepsOf } from '../proposals/steps'
import { changesOf, refused } from '../stage/rows'
import { fillDisk, stranger, studio, utc } from '../stage/studio'

const of = studio()
const { idOf, steer } = stepsOf(of)

const due = async (at: Moment = of.cast().now) => remindDue(await of.as('system'), of.stamp(at))

/** Whose reminders were written at a moment, by the record. */
const remindedAt = (at: Moment): unknown[] =>
	stranger(of.folder(), (sqlite) =>
		sqlite
			.prepare("SELECT object FROM event WHERE act = 'client reminded' AND actor = 'system' AND at = ? ORDER BY object")
			.pluck()
			.all(at),
	)
const objects = (...keys: WinterKey[]) => keys.map((key) => `proposal ${idOf(key)}`).toSorted()

// Today is the 6th. The vet is to answer by the 7th, the bakery and the dentist by the 9th, Stucco and Fieldstone by
// the 10th, Clapboard by the 11th.
describe('reminders by themselves', () => {
	test('go to all who are due, each with its line and its mails, and not again on that day', async () => {
		const { said, did } = await changesOf(of.folder(), () => due())
		const sent = remindedAt(of.cast().now)
		expect(sent).toEqual(expect.arrayContaining(objects('vet', 'bakery', 'dental')))
		expect(said).toBe(sent.length)
		expect(did).toMatchObject({ event: `+${said}`, proposal: `~${said}` })
		expect(await refused(of.folder(), () => due(utc('2026-10-06T19:00')))).toBe(0)
	})

	test('to who may approve alone', async () => {
		await due()
		const to = stranger(of.folder(), (sqlite) =>
			sqlite
				.prepare(
					"SELECT person_id FROM outbox WHERE message = 'reminder' AND created_at = ? AND json_extract(facts, '$.proposal') = ?",
				)
				.pluck()
				.all(of.cast().now, idOf('bakery')),
		)
		const { bakeryApprover, bakerySecondApprover } = of.cast().people
		expect(to.toSorted()).toEqual([bakeryApprover.id, bakerySecondApprover.id].toSorted())
	})

	test('after days without the house only the latest, and none after the day to answer by', async () => {
		const at = utc('2026-10-09T15:00')
		await due(at)
		expect(remindedAt(at)).toEqual(expect.arrayContaining(objects('bakery', 'dental')))
		expect(remindedAt(at)).not.toContain(objects('vet')[0])
		expect(await due(utc('2026-10-09T16:00'))).toBe(0)
	})

	test('not on the day of a reminder by hand', async () => {
		const once = of.once()
		must('bakery', await remind(await of.as('designer'), { proposal: idOf('bakery'), again: false, once }, of.stamp()))
		const at = utc('2026-10-06T18:00')
		await due(at)
		expect(remindedAt(at)).not.toContain(objects('bakery')[0])
	})

	test('not to one who was taken back, nor to one who was erased', async () => {
		await steer('dental', 'withdraw')
		must('erase', await eraseClient(await of.as('designer'), of.cast().clients.bakery.id, of.stamp()))
		await due()
		expect(remindedAt(of.cast().now)).toContain(objects('vet')[0])
		for (const gone of objects('dental', 'bakery')) expect(remindedAt(of.cast().now)).not.toContain(gone)
	})

	// Wrenholt is four hours behind UTC in October.
	test.each([
		['2026-10-06T11:59', 0],
		['2026-10-07T00:00', 0],
	])('not while the town sleeps, at %s', async (at, count) => {
		expect(await refused(of.folder(), () => due(utc(at)))).toBe(count)
	})

	test.each(['2026-10-06T12:00', '2026-10-06T23:59'])('from eight to eight, at %s', async (at) => {
		expect(await due(utc(at))).toBeGreaterThan(0)
	})

	test.each(['designer', 'helper', 'bakeryApprover', 'nobody'] as const)('not for %s', async (who) => {
		expect(await refused(of.folder(), async () => remindDue(await of.as(who), of.stamp()))).toBe(0)
	})

	test.each(['event', 'outbox'])('leave nothing of one when %s cannot be written', async (table) => {
		fillDisk(of.folder(), table)
		await refused(of.folder(), () => expect(due()).rejects.toThrow('the disk is full'))
	})
})
