import { describe, expect, it } from 'vitest'
import { open } from '../../site/here'
import { snapshot, snapshotAtRest } from '../../site/snapshot'
import { thingsOf } from '../../site/things'
import { draft, post, refuses, things, version } from './desk'
import { replaced } from './paths'

describe('a draft as a whole', () => {
	const unchanged = async (act: () => Promise<void>) => {
		const before = await snapshotAtRest(open.site.folder)
		await act()
		expect(snapshot(open.site.folder)).toEqual(before)
	}
	const option = () => draft.options[0]
	const lines = (count: number) => Array.from({ length: count }, () => option()?.pots[0]?.lines[0])

	it.each([
		['61 lines', () => replaced(draft, ['options', 0, 'pots', 0, 'lines'], lines(61))],
		['2,500 lines', () => replaced(draft, ['options', 0, 'pots', 0, 'lines'], lines(2500))],
		[
			'61 pots',
			() =>
				replaced(
					draft,
					['options', 0, 'pots'],
					Array.from({ length: 61 }, () => option()?.pots[0]),
				),
		],
		[
			'nine colours',
			() =>
				replaced(
					draft,
					['options', 0, 'palette'],
					Array.from({ length: 9 }, () => option()?.palette[0]),
				),
		],
		['five palettes', () => ({ ...draft, options: Array.from({ length: 5 }, () => option()) })],
		['21 extras', () => ({ ...draft, extras: Array.from({ length: 21 }, () => draft.extras[0]) })],
		['61 containers', () => ({ ...draft, containers: Array.from({ length: 61 }, () => draft.containers[0]) })],
		['another version of the form', () => ({ ...draft, v: 2 })],
	])('%s', async (_, made) => {
		await unchanged(async () => expect(await refuses(made())).toEqual([]))
	})

	it('10,000 lines are more than a draft can hold', async () => {
		await unchanged(async () => {
			const body = { version: version(), draft: replaced(draft, ['options', 0, 'pots', 0, 'lines'], lines(10_000)) }
			expect((await post('save', body)).status).toBe(413)
		})
	})

	it.each([
		['nothing', ''],
		['half of it', '{"version":1,"draft":{'],
		['no JSON', '<draft/>'],
		['a number', '7'],
		['null', 'null'],
		['a list', '[]'],
		['a word', '"draft"'],
		['lists in lists in lists', '['.repeat(190_000)],
		['lists in lists, closed', `{"version":1,"draft":${'['.repeat(90_000)}${']'.repeat(90_000)}}`],
		['things in things', `{"version":1,"draft":${'{"a":'.repeat(40_000)}1${'}'.repeat(40_000)}}`],
		['a number without end', `{"version":${'9'.repeat(100_000)},"draft":{}}`],
		['the same key often', `{${'"version":1,'.repeat(20_000)}"draft":{}}`],
		['a byte order mark', '\ufeff{"version":1,"draft":{}}'],
		['half a sign', '{"version":1,"draft":{"title":"\\ud800"}}'],
	])('%s', async (_, body) => {
		await unchanged(async () => {
			expect((await post('save', body)).status).toBe(422)
			expect((await post('price', body)).status).toBe(422)
		})
	})

	it('with half a sign in its words', async () => {
		await unchanged(async () => {
			for (const half of ['\\ud800', 'a\\udc00b', '\\ud83c']) {
				const text = JSON.stringify({ version: version(), draft: { ...draft, title: 'HERE' } }).replace('HERE', half)
				expect((await post('save', text)).status).toBe(422)
			}
		})
	})

	it('with another version than the one that stands is handed what stands', async () => {
		await unchanged(async () => {
			for (const other of [version() - 1, version() + 1]) {
				const answer = await post('save', { version: other, draft })
				expect([answer.status, JSON.parse(answer.body).version]).toEqual([409, version()])
			}
			for (const none of [0, -1, 1.5, '1', null, Number.MAX_SAFE_INTEGER + 2])
				expect((await post('save', { version: none, draft })).status).toBe(422)
		})
	})

	it('that two windows save at the same moment is kept once', async () => {
		const now = version()
		const answers = await Promise.all([1, 2, 3, 4].map(() => post('save', { version: now, draft })))
		expect(answers.map(({ status }) => status).toSorted()).toEqual([200, 409, 409, 409])
		expect(version()).toBe(now + 1)
	})

	it('that names what is another client’s or nobody’s is kept, priced without it, and cannot be published', async () => {
		const theirs = thingsOf(open.site.folder, open.site.cast, 'stucco')
		const [first] = draft.containers
		for (const [id, says] of [[theirs.container, 'A container is not this client’s.']] as const) {
			const next = { ...draft, containers: [...draft.containers, { ...first, id }] }
			expect((await post('price', { draft: next })).body).toContain(says)
			expect((await post('price', { draft: next })).body).not.toContain('Merrowin')
		}
		const stranger = replaced(
			draft,
			['options', 0, 'pots', 0, 'lines', 0, 'material'],
			'01900000-0000-7000-8000-000000000000',
		)
		expect((await post('price', { draft: stranger })).body).toContain('a material that is not in the catalogue')
	})

	it('with one key for two palettes, or for two extras, is refused', async () => {
		await unchanged(async () => {
			const [a] = draft.options
			expect(await refuses({ ...draft, options: [a, { ...a, name: 'The same again' }] })).toEqual([])
			const [extra] = draft.extras
			expect(await refuses({ ...draft, extras: [extra, { ...extra, name: 'The same again' }] })).toEqual([])
		})
	})

	it('still opens afterwards', async () => {
		for (const page of ['', '/preview'])
			expect((await open.ask('designer', `/studio/proposal/${things.proposal}${page}`)).status).toBe(200)
	})
})
