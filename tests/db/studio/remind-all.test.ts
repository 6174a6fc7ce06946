import { describe, expect, test } from 'vitest'
import { remindAll } from '@/db/studio/remind-all'
import type { AnyPersonKey } from '@/demo/play/stage'
import { id } from '@/lib/units/id'
import { changesOf, refused } from '../stage/rows'
import { fillDisk, stranger, studio, utc } from '../stage/studio'

const of = studio()

const all = async (change: { again?: boolean; once?: ReturnType<typeof of.once> } = {}, at = of.cast().now) =>
	remindAll(
		await of.as('designer'),
		{ season: of.cast().seasons.winter, again: false, once: of.once(), ...change },
		of.stamp(at),
	)
const reminders = () =>
	stranger(of.folder(), (sqlite) =>
		sqlite
			.prepare<[string], number>("SELECT count(*) FROM event WHERE act = 'client reminded' AND at >= ?")
			.pluck()
			.get(of.cast().now),
	)

// Six owe an answer; the vet was reminded yesterday.
describe('reminding all who wait', () => {
	test('reaches each once but for who was reminded lately', async () => {
		const { said, did } = await changesOf(of.folder(), () => all())
		expect(said).toEqual({ ok: true, reminded: 5, lately: 1 })
		expect(did).toMatchObject({ event: '+5', once: '+5', proposal: '~5' })
	})

	test('with a second word reaches those too', async () => {
		expect(await all({ again: true })).toEqual({ ok: true, reminded: 6, lately: 0 })
	})

	test('two days later nobody was reminded lately; the vet’s day has passed', async () => {
		await all()
		expect(await all({}, utc('2026-10-08T16:00'))).toEqual({ ok: true, reminded: 5, lately: 0 })
	})

	test('sent twice reminds nobody twice, not even with the second word', async () => {
		const once = of.once()
		await all({ again: true, once })
		expect(await refused(of.folder(), () => all({ again: true, once }))).toEqual({ ok: true, reminded: 0, lately: 0 })
		expect(reminders()).toBe(6)
	})

	test('broken off in the middle, and sent again, reaches the rest', async () => {
		const once = of.once()
		stranger(of.folder(), (sqlite) =>
			sqlite.exec(
				`CREATE TRIGGER full BEFORE INSERT ON event WHEN NEW.object = (SELECT 'proposal ' || id FROM proposal WHERE state = 'waiting for an answer' ORDER BY answer_by DESC LIMIT 1) BEGIN SELECT RAISE(ABORT, 'the disk is full'); END`,
			),
		)
		await expect(all({ again: true, once })).rejects.toThrow('the disk is full')
		expect(reminders()).toBe(5)
		stranger(of.folder(), (sqlite) => sqlite.exec('DROP TRIGGER full'))
		expect(await all({ again: true, once })).toEqual({ ok: true, reminded: 1, lately: 0 })
		expect(reminders()).toBe(6)
	})

	test('leaves nothing when no line can be written', async () => {
		fillDisk(of.folder(), 'event')
		await refused(of.folder(), () => expect(all()).rejects.toThrow('the disk is full'))
	})

	test.each<AnyPersonKey | 'nobody' | 'system'>(['helper', 'bakeryApprover', 'bakeryViewer', 'nobody', 'system'])(
		'not for %s',
		async (who) => {
			const what = { season: of.cast().seasons.winter, again: true, once: of.once() }
			const said = await refused(of.folder(), async () => remindAll(await of.as(who), what, of.stamp()))
			expect(said).toEqual({ ok: false, why: 'hidden' })
		},
	)

	test('of no season there is nobody, and of one that is settled nobody waits', async () => {
		const none = { season: id<'season'>('01999999-0000-7000-8000-00000000000a'), again: true, once: of.once() }
		const said = await refused(of.folder(), async () => remindAll(await of.as('designer'), none, of.stamp()))
		expect(said).toEqual({ ok: false, why: 'hidden' })
		const autumn = { season: of.cast().seasons.autumn, again: true, once: of.once() }
		expect(await remindAll(await of.as('designer'), autumn, of.stamp())).toEqual({ ok: true, reminded: 0, lately: 0 })
	})
})
