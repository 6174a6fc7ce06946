import { existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { saveDraft } from '@/db/proposals/draft'
import { publish } from '@/db/proposals/publish'
import { remind } from '@/db/proposals/remind'
import { steer } from '@/db/proposals/steer'
import { verify } from '@/db/record/verify'
import { seasonPage } from '@/db/studio/season-page'
import type { ClientKey } from '@/demo/cast/clients'
import type { WinterKey } from '@/demo/cast/proposals/proposals'
import { must } from '@/demo/play/must'
import { stepsOf } from '../proposals/steps'
import { refused } from '../stage/rows'
import { found, stranger, studio } from '../stage/studio'

const of = studio()
const { draft, idOf, steer: take } = stepsOf(of)
const hidden = { ok: false, why: 'hidden' }

const erase = async (client: ClientKey) =>
	must(client, await eraseClient(await of.as('designer'), of.cast().clients[client].id, of.stamp()))
const stateOf = (key: WinterKey) =>
	stranger(of.folder(), (sqlite) => sqlite.prepare('SELECT state FROM proposal WHERE id = ?').pluck().get(idOf(key)))
const linesOf = (key: WinterKey) =>
	stranger(of.folder(), (sqlite) =>
		sqlite
			.prepare('SELECT act FROM event WHERE object = ? ORDER BY seq')
			.pluck()
			.all(`proposal ${idOf(key)}`),
	)
const ledger = async () =>
	found(await seasonPage(await of.as('designer'), { season: of.cast().seasons.winter, page: 1 }, of.stamp()))

describe('what was open of an erased client', () => {
	test.each(['bakery', 'inn'] as const)('%s, out or asked to be changed, is taken back with a line', async (key) => {
		await erase(key)
		expect([stateOf(key), linesOf(key).at(-1)]).toEqual(['withdrawn', 'proposal withdrawn'])
		expect((await ledger()).rows.find(({ id }) => id === idOf(key))?.group).toBe('settled')
		expect(await verify(await of.as('designer'))).toMatchObject({ broken: null })
	})

	test('a yes that was opened anew is taken back too', async () => {
		await take('creditUnion', 'reopen', 'the wall was painted')
		await erase('creditUnion')
		expect([stateOf('creditUnion'), linesOf('creditUnion').at(-1)]).toEqual(['withdrawn', 'proposal withdrawn'])
	})

	test('a draft that nobody ever saw is gone', async () => {
		const before = (await ledger()).rows.length
		await erase('bicycles')
		expect(stateOf('bicycles')).toBeUndefined()
		expect((await ledger()).rows).toHaveLength(before - 1)
	})

	test.each(['creditUnion', 'skipped', 'installed'] as const)('%s, which is settled, stays as it was', async (key) => {
		const [state, lines] = [stateOf(key), linesOf(key)]
		await erase(key)
		expect([stateOf(key), linesOf(key)]).toEqual([state, lines])
	})

	test('does not count among those who are waited for', async () => {
		const owing = async () => (await ledger()).totals.find(({ state }) => state === 'waiting for an answer')?.count ?? 0
		const before = await owing()
		await erase('vet')
		expect(await owing()).toBe(before - 1)
	})
})

describe('nothing more is written about an erased client', () => {
	test('no reminder, no draft, no revision, no reason', async () => {
		const kept = await draft('creditUnion')
		await erase('creditUnion')
		await erase('vet')
		const [designer, union] = [await of.as('designer'), idOf('creditUnion')]
		const said = await refused(of.folder(), async () => [
			await remind(designer, { proposal: idOf('vet'), again: true, once: of.once() }, of.stamp()),
			await saveDraft(designer, { proposal: union, version: kept.version, draft: kept.draft }, of.stamp()),
			await publish(designer, { proposal: union, version: kept.version, once: of.once() }, of.stamp()),
			await steer(designer, { proposal: union, step: 'cancel', reason: 'new words', once: of.once() }, of.stamp()),
		])
		expect(said).toEqual([hidden, hidden, hidden, hidden])
	})
})

describe('copies of mails', () => {
	const folder = () => join(of.folder(), 'mail')
	const kinds = ['eml', 'json', '1.jpg']

	test('to an erased client and about one are deleted, and those of others stay', async () => {
		const ids = stranger(of.folder(), (sqlite) =>
			sqlite.prepare<[], string>('SELECT id FROM outbox WHERE person_id IS NOT NULL').pluck().all(),
		)
		mkdirSync(folder())
		for (const id of ids) for (const kind of kinds) writeFileSync(join(folder(), `${id}.${kind}`), 'words')
		await erase('inn')
		const theirs = stranger(of.folder(), (sqlite) =>
			sqlite
				.prepare<{ client: string }, string>(
					`SELECT outbox.id FROM outbox LEFT JOIN proposal ON facts LIKE '%"' || proposal.id || '"%'
						WHERE client_id = :client OR person_id IN (SELECT person_id FROM contact WHERE client_id = :client)`,
				)
				.pluck()
				.all({ client: of.cast().clients.inn.id }),
		)
		expect(theirs.length).toBeGreaterThan(2)
		const left = ids.filter((id) => !theirs.includes(id)).flatMap((id) => kinds.map((kind) => `${id}.${kind}`))
		expect(readdirSync(folder()).toSorted()).toEqual(left.toSorted())
	})

	test('are not there when mail went to a server', async () => {
		await erase('inn')
		expect(existsSync(folder())).toBe(false)
	})
})
