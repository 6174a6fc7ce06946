import { beforeEach, describe, expect, test } from 'vitest'
import { readDraft, saveDraft } from '@/db/proposals/draft'
import { applyCollection } from '@/db/studio/collection/apply'
import { changeCollection } from '@/db/studio/collection/change'
import { readCollection } from '@/db/studio/collection/read'
import { toApply } from '@/db/studio/collection/to-apply'
import { listSeasons } from '@/db/studio/seasons'
import { winterCollection } from '@/demo/cast/catalogue/collection'
import { manyClients } from '@/demo/many'
import { must } from '@/demo/play/must'
import { SentBefore } from '@/lib/record/sent-before'
import type { Change } from '@/lib/season/collection/change'
import { hex } from '@/lib/units/hex'
import { type ClientId, id } from '@/lib/units/id'
import { found, stranger, studio } from '../stage/studio'

const of = studio()
const winter = () => of.cast().seasons.winter
const designer = () => of.as('designer')
const absent = '01999999-0000-7000-8000-00000000000a'
const page = async () => found(await readCollection(await designer(), winter()))
const change = async (next: Change, version?: number) =>
	changeCollection(
		await designer(),
		{ season: winter(), version: version ?? (await page()).version, change: next },
		of.stamp(),
	)
const apply = async (clients: readonly ClientId[], options: 1 | 2 | 3 = 2) =>
	applyCollection(await designer(), { season: winter(), clients, options }, of.stamp())
const drafted = async (clients: readonly ClientId[]) => must('apply', await apply(clients)).clients
const events = (act: string) =>
	stranger(of.folder(), (sqlite) => Number(sqlite.prepare('SELECT count(*) FROM event WHERE act = ?').pluck().get(act)))
const two = [
	{ name: 'Kelp', hex: hex('#3d6147') },
	{ name: 'Sand', hex: hex('#d8d0c1') },
]
const design = async (name: string, more = {}): Promise<Change> => {
	const recipe = found((await page()).collection.designs[0]).recipes
	return { is: 'design', design: { key: null, name, palette: two, recipes: { ...recipe, ...more } } }
}

describe('a season’s house designs', () => {
	test('are the cast’s four, ready to be applied', async () => {
		const { collection, problems, version } = await page()
		expect(collection.designs.map(({ name }) => name)).toEqual(winterCollection.designs.map(({ name }) => name))
		expect([problems, version]).toEqual([[], 7])
	})

	test('are none where nobody has made any', async () => {
		const spring = found((await listSeasons(await designer())).find(({ quarter }) => quarter === 'autumn'))
		const { collection, version, problems } = found(await readCollection(await designer(), spring.id))
		expect([collection.designs, version, problems.length]).toEqual([[], 0, 3])
	})

	test('one more, told in the record', async () => {
		const before = events('collection changed')
		must('a fifth', await change(await design('Kelp and sand')))
		expect((await page()).collection.designs.at(-1)?.name).toBe('Kelp and sand')
		expect(events('collection changed')).toBe(before + 1)
	})

	test('over another version nothing', async () => {
		expect(await change(await design('Kelp and sand'), 3)).toEqual({ ok: false, why: 'saved elsewhere' })
		expect((await page()).version).toBe(7)
	})

	test('the same name twice, or what the library has not', async () => {
		expect(await change(await design('kiln AND sloe'))).toEqual({ ok: false, why: 'name taken' })
		const unknown = { pot: id<'recipe'>(absent) }
		expect(await change(await design('Kelp', unknown))).toEqual({ ok: false, why: 'unknown' })
	})

	test('a ninth is one too many, and loses nothing', async () => {
		for (const name of ['five', 'six', 'seven', 'eight']) must(name, await change(await design(name)))
		expect(await change(await design('nine'))).toEqual({ ok: false, why: 'too many' })
		expect((await page()).collection.designs).toHaveLength(8)
	})

	test('what stands in for a material that was retired is told', async () => {
		stranger(of.folder(), (sqlite) =>
			sqlite
				.prepare('UPDATE material SET retired_at = ? WHERE id = ?')
				.run(of.cast().now, of.cast().materials.copperGlobes),
		)
		expect((await page()).standIns).toEqual([
			'Instead of clusters of copper globes, no longer taken: woven willow balls.',
		])
	})
})

describe('applied to clients', () => {
	let clients: readonly ClientId[] = []
	beforeEach(async () => {
		clients = await manyClients(await designer(), 5, of.stamp())
	})

	test('begins and drafts each, grown to their own containers, and says how it fits', async () => {
		const all = await drafted(clients)
		expect(all.map(({ client, is }) => [client, is])).toEqual(clients.map((client) => [client, 'drafted']))
		for (const { proposal, fits } of all) {
			const { draft, version } = found(await readDraft(await designer(), found(proposal ?? undefined), of.stamp()))
			expect(draft.options.map(({ key }) => key)).toEqual(fits.map(({ option }) => option))
			expect([draft.options.length, version, draft.title]).toEqual([2, 2, winterCollection.title])
			expect(draft.window.from).not.toBeNull()
			for (const { pots } of draft.options)
				expect(pots.map(({ container }) => container)).toEqual(draft.containers.map((each) => each.id))
		}
		expect([events('collection applied'), events('draft started')]).toEqual([1, 5])
	})

	test('leaves alone what somebody worked on, and whoever is not there', async () => {
		const { bakery, bookshop } = of.cast().clients
		const before = await readDraft(await designer(), of.cast().proposals.bookshop, of.stamp())
		const all = await drafted([bakery.id, bookshop.id, id<'client'>(absent), found(clients[0])])
		expect(all.map(({ is }) => is)).toEqual(['left alone', 'left alone', 'not there', 'drafted'])
		expect(await readDraft(await designer(), of.cast().proposals.bookshop, of.stamp())).toEqual(before)
	})

	test('a second time changes nothing', async () => {
		const [first] = await drafted(clients)
		const again = await drafted(clients)
		expect(again.map(({ is }) => is)).toEqual(clients.map(() => 'left alone'))
		expect(again[0]?.proposal).toBe(first?.proposal)
	})

	test('fills a draft that is empty, and keeps the dates that she gave it', async () => {
		const [{ proposal } = { proposal: null }] = await drafted(clients.slice(0, 1))
		const mine = found(proposal ?? undefined)
		const { draft, version } = found(await readDraft(await designer(), mine, of.stamp()))
		const bare = { ...draft, options: [], letter: 'Dear Ada,', answerBy: null }
		must('bare', await saveDraft(await designer(), { proposal: mine, version, draft: bare }, of.stamp()))
		const [again] = await drafted(clients.slice(0, 1))
		expect(again?.is).toBe('drafted')
		const after = found(await readDraft(await designer(), mine, of.stamp()))
		expect([after.draft.letter, after.draft.answerBy, after.draft.options.length]).toEqual(['Dear Ada,', null, 2])
	})

	test('a client without a container is not begun', async () => {
		stranger(of.folder(), (sqlite) =>
			sqlite
				.prepare('UPDATE container SET retired_at = ? WHERE place_id IN (SELECT id FROM place WHERE client_id = ?)')
				.run(of.cast().now, found(clients[0])),
		)
		const [bare] = await drafted(clients.slice(0, 1))
		expect([bare?.is, bare?.proposal]).toEqual(['no containers', null])
	})

	test('is refused while a design has an empty recipe, and begins nobody', async () => {
		const recipe = found((await page()).collection.designs[0]).recipes.pot
		stranger(of.folder(), (sqlite) => sqlite.prepare('DELETE FROM recipe_line WHERE recipe_id = ?').run(recipe))
		const refused = await apply(clients)
		expect(refused).toEqual({
			ok: false,
			why: 'not ready',
			problems: [
				{
					at: 'designs.d1.recipes.pot',
					says: '“Kiln and sloe”: the recipe “Copper and plum” is empty, so nothing would go into a pot.',
				},
			],
		})
		expect([events('collection applied'), events('draft started')]).toEqual([0, 0])
	})

	test('one form goes through once', async () => {
		const stamp = { ...of.stamp(), once: of.once() }
		const applying = { season: winter(), clients, options: 1 } as const
		must('first', await applyCollection(await designer(), applying, stamp))
		await expect(applyCollection(await designer(), applying, stamp)).rejects.toThrow(SentBefore)
	})
})

describe('whom it can be applied to', () => {
	test('those without a design; their drafts stand below with how they fit', async () => {
		const clients = await manyClients(await designer(), 4, of.stamp())
		const before = found(await toApply(await designer(), winter(), of.stamp()))
		expect(before.clients.map((each) => each.id)).toEqual(expect.arrayContaining([...clients]))
		const all = await drafted(clients)
		const after = found(await toApply(await designer(), winter(), of.stamp()))
		expect(after.clients.map((each) => each.id)).toEqual([of.cast().clients.newcomer.id])
		for (const { client, fits } of all) expect(after.drafts.find((each) => each.client === client)?.fits).toEqual(fits)
	})
})
