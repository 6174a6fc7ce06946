import { describe, expect, test, vi } from 'vitest'
import { publish } from '@/db/proposals/publish'
import { type SeasonDraft, seasonDrafts, seasonNames } from '@/db/studio/ready-drafts'
import type { WinterKey } from '@/demo/cast/proposals/proposals'
import { onceFor } from '@/lib/record/once-for'
import { leastTotal } from '@/lib/season/standing'
import { id } from '@/lib/units/id'
import { stepsOf } from '../proposals/steps'
import { refused } from '../stage/rows'
import { found, later, studio } from '../stage/studio'

const of = studio()
const { idOf, page, publish: publishOne, redraft } = stepsOf(of)

const drafts = async (at = of.cast().now) =>
	found(await seasonDrafts(await of.as('designer'), of.cast().seasons.winter, of.stamp(at)))
const draftOf = async (key: WinterKey, at = of.cast().now): Promise<SeasonDraft> =>
	found((await drafts(at)).drafts.find((each) => each.id === idOf(key)))

describe('the drafts of a season', () => {
	test('are those that wait for the studio, by name', async () => {
		const { drafts: all } = await drafts()
		const waiting = ['bicycles', 'bookshop', 'inn', 'unpriced'] as const
		expect(all.map((each) => each.id).toSorted()).toEqual(waiting.map(idOf).toSorted())
		expect(all.map(({ name }) => name)).toEqual(all.map(({ name }) => name).toSorted())
	})

	test('one that is ready says what publishing it sends out, and it does', async () => {
		const { outlook, version } = await draftOf('bicycles')
		expect(outlook).toMatchObject({ ok: true, beforeCents: null, isLeast: false, isUnderFloor: false })
		await publish(
			await of.as('designer'),
			{ proposal: idOf('bicycles'), version, once: of.once(), within: of.cast().seasons.winter },
			of.stamp(),
		)
		const out = found((await page('bicycles')).offer)
		expect(outlook).toMatchObject({ totalCents: leastTotal(out), answerBy: out.answerBy })
	})

	test('a wish that is not in the draft yet is not ready; saved since, it is, with the total before', async () => {
		expect((await draftOf('inn')).outlook).toEqual({
			ok: false,
			problems: [{ at: '', says: 'The change that was asked for is not in the draft yet.' }],
		})
		const before = leastTotal(found((await page('inn')).offer))
		await redraft('inn', (draft) => ({ ...draft, letter: 'Taller at the steps now.' }))
		expect((await draftOf('inn')).outlook).toMatchObject({ ok: true, beforeCents: before })
	})

	test('what is missing is said', async () => {
		await redraft('bookshop', (draft) => ({ ...draft, title: '', answerBy: null }))
		const { outlook } = await draftOf('bookshop')
		expect(outlook.ok).toBe(false)
		expect(outlook).toMatchObject({ problems: expect.arrayContaining([expect.objectContaining({ at: 'title' })]) })
	})

	test('ask what is common to all once, however many there are', async () => {
		const prepare = vi.spyOn(found(globalThis.doorsillDatabase).sqlite, 'prepare')
		await drafts()
		const asked = prepare.mock.calls.map(([sql]) => sql)
		prepare.mockRestore()
		const of = (table: string) => asked.filter((sql) => sql.includes(`from "${table}"`)).length
		expect([of('material'), of('pack'), of('rates'), of('draft_material')]).toEqual([1, 1, 1, 1])
	})

	test.each(['helper', 'bakeryApprover', 'nobody', 'system'] as const)('are not there for %s', async (who) => {
		const viewer = await of.as(who)
		expect(await seasonDrafts(viewer, of.cast().seasons.winter, of.stamp())).toBeUndefined()
		expect(await seasonNames(viewer, of.cast().seasons.winter)).toBeUndefined()
	})

	test('nor without their season', async () => {
		const none = id<'season'>('01999999-0000-7000-8000-00000000000a')
		expect(await seasonDrafts(await of.as('designer'), none, of.stamp())).toBeUndefined()
		expect(await seasonNames(await of.as('designer'), none)).toBeUndefined()
	})
})

describe('published as one of many', () => {
	const one = async (key: WinterKey, change: Partial<Parameters<typeof publish>[1]> = {}, at = of.cast().now) =>
		publish(
			await of.as('designer'),
			{ proposal: idOf(key), version: 1, once: of.once(), within: of.cast().seasons.winter, ...change },
			of.stamp(at),
		)

	test('only of that season', async () => {
		const { version } = await draftOf('bicycles')
		const within = of.cast().seasons.autumn
		expect(await refused(of.folder(), () => one('bicycles', { version, within }))).toEqual({ ok: false, why: 'hidden' })
	})

	test.each(['bakery', 'creditUnion', 'skipped', 'withdrawn', 'installed'] as const)(
		'not %s, who does not wait for the studio',
		async (key) => {
			expect(await refused(of.folder(), () => one(key))).toEqual({ ok: false, why: 'not waiting for us' })
		},
	)

	test('once for a form, even when it waits again', async () => {
		const { version } = await draftOf('bicycles')
		const once = onceFor(of.once(), idOf('bicycles'))
		expect(await one('bicycles', { version, once })).toMatchObject({ ok: true, number: 1 })
		expect(await refused(of.folder(), () => one('bicycles', { version, once }))).toMatchObject({
			why: 'not waiting for us',
		})
		await publishOne('bicycles', later(of.cast().now, 1000))
	})
})
