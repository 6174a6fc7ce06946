import { asc } from 'drizzle-orm'
import { describe, expect, test } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { prepared, read } from '@/db/open'
import { client } from '@/db/schema'
import { actorOf, denied, seenBy, viewerOf, visibleNow, visibleTo } from '@/db/viewer'
import { must } from '@/demo/play/must'
import { id } from '@/lib/units/id'
import { stranger, studio } from '../stage/studio'

const of = studio()
const nobody = id<'person'>('01999999-0000-7000-8000-00000000000a')

describe('who is asking, as the record stands now', () => {
	test.each([
		['designer', { is: 'staff', role: 'designer' }],
		['helper', { is: 'staff', role: 'helper' }],
		['nobody', { is: 'nobody' }],
		['system', { is: 'system' }],
	] as const)('%s', async (who, is) => {
		const person = who === 'nobody' || who === 'system' ? {} : { person: of.cast().people[who].id }
		expect(await of.as(who)).toEqual({ ...is, ...person })
	})

	test('a contact, with what they may at each door', async () => {
		const { bakery, vet, fieldstone } = of.cast().clients
		expect(await of.as('bakeryViewer')).toEqual({
			is: 'contact',
			person: of.cast().people.bakeryViewer.id,
			clients: new Map([[bakery.id, 'look']]),
		})
		expect(await of.as('twoDoors')).toMatchObject({
			clients: new Map([
				[vet.id, 'approve'],
				[fieldstone.id, 'look'],
			]),
		})
	})

	test('one who is not there is nobody', async () => {
		expect(await viewerOf(nobody)).toEqual({ is: 'nobody' })
	})

	test.each([
		['a door that was closed', 'UPDATE contact SET ended_at = :now WHERE person_id = :person', 'bakeryApprover'],
		['a client who is archived', 'UPDATE client SET archived_at = :now WHERE id = :client', 'bakeryApprover'],
		['staff who left', 'UPDATE staff SET ended_at = :now WHERE person_id = :person', 'helper'],
	] as const)('%s is gone at once', async (_, sql, who) => {
		const named = { now: of.cast().now, person: of.cast().people[who].id, client: of.cast().clients.bakery.id }
		stranger(of.folder(), (sqlite) => sqlite.prepare(sql).run(named))
		expect(await of.as(who)).toEqual({ is: 'nobody' })
	})

	test('an erased client’s contact is nobody', async () => {
		must('erase', await eraseClient(await of.as('designer'), of.cast().clients.inn.id, of.stamp()))
		expect(await of.as('innApprover')).toEqual({ is: 'nobody' })
	})
})

describe('rows are narrowed by client', () => {
	const seen = async (who: Parameters<typeof of.as>[0]) => {
		const viewer = await of.as(who)
		const rows = read((db) =>
			db.select({ id: client.id }).from(client).where(visibleTo(viewer, client.id)).orderBy(asc(client.id)).all(),
		)
		return rows.map((row) => row.id)
	}
	const seenByStatement = async (who: Parameters<typeof of.as>[0]) => {
		const viewer = await of.as(who)
		const statement = prepared((db) =>
			db.select({ id: client.id }).from(client).where(visibleNow(client.id)).orderBy(asc(client.id)).prepare(),
		)
		return read((db) => statement(db).all(seenBy(viewer))).map((row) => row.id)
	}
	const all = () => Object.values(of.cast().clients).map((each) => each.id)

	test.each(['designer', 'helper', 'system'] as const)('%s: all', async (who) => {
		expect(await seen(who)).toEqual(all().toSorted())
	})

	test('a contact: their own', async () => {
		const { bakery, vet, fieldstone } = of.cast().clients
		expect(await seen('bakeryViewer')).toEqual([bakery.id])
		expect(await seen('twoDoors')).toEqual([vet.id, fieldstone.id].toSorted())
	})

	test('nobody: none', async () => {
		expect(await seen('nobody')).toEqual([])
	})

	test.each(['designer', 'helper', 'system', 'bakeryViewer', 'twoDoors', 'nobody'] as const)(
		'%s: the same by a statement that was prepared',
		async (who) => {
			expect(await seenByStatement(who)).toEqual(await seen(who))
		},
	)
})

describe('a refusal', () => {
	const bakery = () => of.cast().clients.bakery.id
	test.each([
		['bakeryApprover', 'answer the proposal', null],
		['bakeryViewer', 'answer the proposal', { ok: false, why: 'forbidden' }],
		['dentalApprover', 'answer the proposal', { ok: false, why: 'hidden' }],
		['nobody', 'see the proposal', { ok: false, why: 'hidden' }],
		['helper', 'see the costing', { ok: false, why: 'hidden' }],
		['system', 'keep house', null],
	] as const)('%s, %s: %j', async (who, act, no) => {
		expect(denied(await of.as(who), act, bakery())).toEqual(no)
	})
})

describe('in the record they are', () => {
	test.each([
		['designer', (): string => `staff ${of.cast().people.designer.id}`],
		['twoDoors', (): string => `contact ${of.cast().people.twoDoors.id}`],
		['nobody', (): string => 'nobody'],
		['system', (): string => 'system'],
	] as const)('%s', async (who, name) => {
		expect(actorOf(await of.as(who))).toBe(name())
	})
})
