import { describe, expect, test } from 'vitest'
import { readSources } from '@/db/proposals/desk/sources'
import { type From, startDraft } from '@/db/proposals/desk/start'
import { readDraft } from '@/db/proposals/draft'
import { readCollection } from '@/db/studio/collection/read'
import type { ClientKey } from '@/demo/cast/clients'
import { must } from '@/demo/play/must'
import { id } from '@/lib/units/id'
import { found, stranger, studio } from '../stage/studio'

const of = studio()
const absent = '01999999-0000-7000-8000-00000000000a'

/** The winter's proposal of a client taken out of the record, as if it were not begun. */
function unbegun(client: ClientKey): void {
	stranger(of.folder(), (sqlite) => {
		sqlite.pragma('foreign_keys = OFF')
		const args = [of.cast().clients[client].id, of.cast().seasons.winter]
		const one = 'SELECT id FROM proposal WHERE client_id = ? AND season_id = ?'
		for (const table of ['draft', 'draft_material'])
			sqlite.prepare(`DELETE FROM ${table} WHERE proposal_id IN (${one})`).run(...args)
		sqlite.prepare('DELETE FROM proposal WHERE client_id = ? AND season_id = ?').run(...args)
	})
}

const start = async (client: ClientKey, from: From) =>
	startDraft(
		await of.as('designer'),
		{ client: of.cast().clients[client].id, season: of.cast().seasons.winter, from },
		of.stamp(),
	)
const started = async (client: ClientKey, from: From) => {
	const { proposal, told } = must(client, await start(client, from))
	return { ...found(await readDraft(await of.as('designer'), proposal, of.stamp())), told }
}
const linesIn = ({ draft }: Awaited<ReturnType<typeof started>>) =>
	draft.options.flatMap(({ pots }) => pots.flatMap((pot) => pot.lines))
const recipe = async () => {
	const page = found(await readCollection(await of.as('designer'), of.cast().seasons.winter))
	return found(page.collection.designs[0]?.recipes.pot ?? undefined)
}

describe('a draft is started', () => {
	test('from what the client had last season: what was approved, with the dates of this one', async () => {
		const then = found(await readDraft(await of.as('designer'), of.cast().autumn.creditUnion, of.stamp()))
		unbegun('creditUnion')
		const made = await started('creditUnion', { is: 'earlier', proposal: of.cast().autumn.creditUnion })
		expect(made.draft.options).toHaveLength(1)
		expect(then.draft.options.map(({ name }) => name)).toContain(made.draft.options[0]?.name)
		expect(made.draft.window).not.toEqual(then.draft.window)
		expect([made.draft.letter, made.draft.agreement, made.draft.design]).toEqual(['', { is: 'none' }, 'repeat'])
		expect(linesIn(made).map(({ count }) => count.way)).toContain('typed')
	})

	test('from another client’s: every count grown to this one’s containers', async () => {
		const made = await started('newcomer', { is: 'another', proposal: of.cast().proposals.inn })
		const own = Object.values(of.cast().containers)
		expect(made.draft.options.map(({ name }) => name)).toEqual(['Rust and moss', 'Copper and plum'])
		expect(made.draft.containers.every((each) => own.includes(each.id))).toBe(true)
		expect(linesIn(made).every(({ count, holding }) => count.way === 'grown' && holding !== 'own')).toBe(true)
		expect([made.draft.letter, made.draft.extras]).toEqual(['', []])
	})

	test('from a recipe, and from the collection', async () => {
		const made = await started('newcomer', { is: 'recipe', recipe: await recipe() })
		expect(made.draft.options.map(({ name }) => name)).toEqual(['Copper and plum'])
		unbegun('newcomer')
		const house = await started('newcomer', { is: 'collection', options: 3 })
		expect(house.draft.options).toHaveLength(3)
	})

	test('where there are palettes already, nothing', async () => {
		const before = await readDraft(await of.as('designer'), of.cast().proposals.bicycles, of.stamp())
		expect(await start('bicycles', { is: 'collection', options: 1 })).toMatchObject({ ok: false, why: 'left alone' })
		expect(await readDraft(await of.as('designer'), of.cast().proposals.bicycles, of.stamp())).toEqual(before)
	})

	test.each<[string, () => From]>([
		['a proposal that is not there', () => ({ is: 'another', proposal: id<'proposal'>(absent) })],
		['another’s as one’s own', () => ({ is: 'earlier', proposal: of.cast().autumn.creditUnion })],
		['a recipe that is not there', () => ({ is: 'recipe', recipe: id<'recipe'>(absent) })],
	])('not from %s', async (_, from) => {
		expect(await start('newcomer', from())).toEqual({ ok: false, why: 'hidden' })
	})
})

test('what a draft can be started from', async () => {
	const asked = { client: of.cast().clients.creditUnion.id, season: of.cast().seasons.winter }
	const sources = found(await readSources(await of.as('designer'), asked))
	expect(sources.earlier.map(({ proposal }) => proposal)).toEqual([of.cast().autumn.creditUnion])
	expect(sources.others.map(({ proposal }) => proposal)).toContain(of.cast().proposals.inn)
	expect(sources.others.map(({ proposal }) => proposal)).not.toContain(of.cast().proposals.creditUnion)
	expect(sources.designs).toEqual(['Kiln and sloe', 'Bell brass', 'First frost', 'Bone and bark'])
	expect(sources.there).toEqual({ proposal: of.cast().proposals.creditUnion, isFilled: true })
})
