import { beforeEach, describe, expect, test, vi } from 'vitest'
import { clientPage } from '@/db/clients/read-clients'
import { writePhoto } from '@/db/clients/visits/photos/files'
import { visitsAt } from '@/db/clients/visits/read-visits'
import { keepAttempt } from '@/db/house/attempts'
import { sideFile } from '@/db/house/side-file'
import { billNow } from '@/db/money/bills/bill-due'
import { planSeason } from '@/db/studio/seasons'
import type { ClientKey } from '@/demo/cast/clients'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import type { Viewer } from '@/lib/access/viewer'
import { hash } from '@/lib/record/hash'
import { day } from '@/lib/units/day'
import { id } from '@/lib/units/id'
import { agreementsOf } from '../agreements/steps'
import { stepsOf } from '../proposals/steps'
import { found, stranger, studio } from '../stage/studio'
import { exported, takers } from './exports'
import { type House, type Outcome, type Person, persons, type Row, type Things } from './outcomes'
import { rows } from './rows'

const of = studio()
const { draft, page } = stepsOf(of)
const { begun, issued, signedOnPaper } = agreementsOf(of)

/** As everybody is to the things of the bakery. */
const who: Record<Person, AnyPersonKey | 'nobody' | 'system'> = {
	designer: 'designer',
	helper: 'helper',
	approver: 'bakeryApprover',
	looker: 'bakeryViewer',
	'of another client': 'dentalApprover',
	nobody: 'nobody',
	system: 'system',
}

/** They make a viewer's rights and are no rights themselves: see `viewer.test.ts`. */
const mechanism = ['viewer actorOf', 'viewer denied', 'viewer seenBy', 'viewer visibleTo']

let house: House

const summer = {
	quarter: 'summer',
	year: 2027,
	windowFrom: day('2027-06-07'),
	windowTo: day('2027-06-18'),
	answerBy: day('2027-05-14'),
} as const

/** A visit of theirs with a photo, put there behind the house's back where the play has none. */
async function visitOf(client: ClientKey): Promise<Pick<Things, 'visit' | 'photo'>> {
	const designer = await of.as('designer')
	const { id: whose } = of.cast().clients[client]
	const [visit] = (await visitsAt(designer, whose)).filter(({ state }) => state !== 'dropped')
	const photo = of.stamp().id<'photo'>()
	const row = [photo, whose, found(visit).id, 'f'.repeat(64), of.cast().now, of.cast().people.designer.id]
	stranger(of.folder(), (sqlite) =>
		sqlite
			.prepare(
				"INSERT INTO photo (id, client_id, visit_id, side, width, height, sha256, position, added_at, added_by) VALUES (?, ?, ?, 'after', 3, 2, ?, 9, ?, ?)",
			)
			.run(...row),
	)
	writePhoto(photo, { large: Buffer.from('large'), small: Buffer.from('small') })
	return { visit: found(visit).id, photo }
}

/** The autumn of each was asked for before. */
const invoiceOf = (client: ClientKey): string =>
	stranger(of.folder(), (sqlite) => {
		const asked = sqlite.prepare<[string], string>('SELECT number FROM invoice WHERE client_id = ?').pluck()
		return found(asked.get(of.cast().clients[client].id))
	})

async function thingsOf(client: ClientKey & ('bakery' | 'dental'), approver: AnyPersonKey): Promise<Things> {
	const designer = await of.as('designer')
	const { contacts, places } = found(await clientPage(designer, of.cast().clients[client].id))
	const [place] = places
	const attempt = of.once()
	const { agreement, hash: document } = await issued(client)
	const { agreement: held, hash: heldDocument } = await signedOnPaper(client)
	await keepAttempt(await of.as(approver), attempt, { typed: { notes: ['Taller.'] }, errors: {} }, of.stamp())
	return {
		client: of.cast().clients[client].id,
		place: found(place).id,
		container: found(place?.containers[0]).id,
		colour: found(place?.colours[0]).id,
		otherColour: found(place?.colours[1]).id,
		contact: found(contacts.find(({ address }) => address === of.cast().people[approver].address)).id,
		person: of.cast().people[approver].id,
		proposal: of.cast().proposals[client],
		revision: (await page(client)).hash,
		version: (await draft(client)).version,
		attempt,
		invoice: invoiceOf(client),
		...{ agreement, document, unissued: await begun(client), held, heldDocument },
		...(await visitOf(client)),
	}
}

const absentId = '01999999-0000-7000-8000-00000000000a'
const absent: Things = {
	client: id<'client'>(absentId),
	place: id<'place'>(absentId),
	container: id<'container'>(absentId),
	colour: id<'site colour'>(absentId),
	otherColour: id<'site colour'>(absentId),
	contact: id<'contact'>(absentId),
	person: id<'person'>(absentId),
	proposal: id<'proposal'>(absentId),
	revision: hash('f'.repeat(64)),
	version: 2,
	attempt: id<'once'>(absentId),
	invoice: '2026-9999',
	visit: id<'visit'>(absentId),
	photo: id<'photo'>(absentId),
	agreement: id<'agreement'>(absentId),
	document: hash('e'.repeat(64)),
	unissued: id<'agreement'>(absentId),
	held: id<'agreement'>(absentId),
	heldDocument: hash('d'.repeat(64)),
}

beforeEach(async () => {
	for (const client of ['bakery', 'dental'] as const)
		await billNow(await of.as('designer'), { client: of.cast().clients[client].id }, of.stamp())
	const unbegun = must('summer', await planSeason(await of.as('designer'), summer, of.stamp())).id
	const { mail, cover } = stranger(of.folder(), (sqlite) => {
		sqlite.exec('UPDATE proposal SET seen_at = NULL')
		const one = (sql: string) => found(sqlite.prepare<[], string>(sql).pluck().get())
		return {
			mail: one('SELECT id FROM outbox WHERE sent_at IS NULL'),
			cover: one("SELECT card_key FROM proposal WHERE state = 'waiting for an answer'"),
		}
	})
	const { seasons, materials } = of.cast()
	const helper = of.cast().people.helper.id
	const machinery = { mail: id<'mail'>(mail), cover, once: of.once, stamp: of.stamp }
	const goods = { material: materials.cedar, stored: materials.brassGlobes }
	house = { season: seasons.winter, unbegun, helper, ...goods, ...machinery }
})

const files = () => [found(globalThis.doorsillDatabase).sqlite, sideFile()] as const
const writes = () =>
	files()
		.map((sqlite) => found(sqlite.prepare<[], number>('SELECT total_changes()').pluck().get()))
		.join(' ')

/** Calls, tells whether anything was written in either file, and takes it back. */
async function tried(call: Row['call'], viewer: Viewer, things: Things): Promise<{ said: unknown; wrote: boolean }> {
	for (const sqlite of files()) sqlite.exec('BEGIN')
	const before = writes()
	try {
		const said = await call(viewer, things, house)
		return { said, wrote: writes() !== before }
	} finally {
		for (const sqlite of files()) sqlite.exec('ROLLBACK')
	}
}

const isEmpty = (said: unknown) =>
	said === undefined || said === 0 || JSON.stringify(said) === '[]' || JSON.stringify(said) === '{"count":0,"first":[]}'

function outcome({ said, wrote }: { said: unknown; wrote: boolean }): Outcome | string {
	for (const why of ['hidden', 'forbidden'] as const)
		if (JSON.stringify(said) === JSON.stringify({ ok: false, why })) return wrote ? `${why}, and wrote` : why
	if (isEmpty(said)) return said === undefined && wrote ? 'done' : wrote ? 'none, and wrote' : 'none'
	if (typeof said === 'object' && said !== null && 'ok' in said && said.ok === false) return JSON.stringify(said)
	return 'value'
}

describe('the table of functions and persons', () => {
	test('has a row for every function of db that takes a viewer, and none beside', () => {
		expect(Object.keys(rows).concat(mechanism).toSorted()).toEqual(exported())
	})

	test('would miss none', () => {
		const text = [
			'export async function readPlan(viewer: Viewer, id: string) {}',
			'export const listPlans = (viewer: Viewer) => []',
			'export const sweepPlans = async (_viewer: Viewer, at: string) => undefined',
			'export function planIn(db: Reading, viewer: Viewer) {}',
			'async function inside(viewer: Viewer) {}',
		].join('\n')
		expect(takers(text)).toEqual(['readPlan', 'listPlans', 'sweepPlans'])
	})
})

const all = Object.entries(rows)

describe('each is given what the table says', () => {
	test.each(all)('%s', async (_, { call, gives }) => {
		const things = await thingsOf('bakery', 'bakeryApprover')
		const given: Record<string, string> = {}
		for (const person of persons) given[person] = outcome(await tried(call, await of.as(who[person]), things))
		expect(given).toEqual(gives)
	})
})

/** Of somebody who looks at money too. */
const money = ['money/read-account readAccount', 'money/read-invoice readInvoice', 'agreements/papers/read readPaper']

describe('one who looks at money too is given what one who looks is, and money as one who approves', () => {
	test.each(all)('%s', async (name, { call, gives }) => {
		const things = await thingsOf('bakery', 'bakeryApprover')
		stranger(of.folder(), (sqlite) =>
			sqlite.prepare('UPDATE contact SET sees_money = 1 WHERE person_id = ?').run(of.cast().people.bakeryViewer.id),
		)
		const given = outcome(await tried(call, await of.as('bakeryViewer'), things))
		expect(given).toBe(money.includes(name) ? gives.approver : gives.looker)
	})
})

describe('another client’s is told as none’s', () => {
	test.each(all.filter(([, row]) => row.of === 'client'))('%s', async (_, { call }) => {
		const foreign = await thingsOf('dental', 'dentalApprover')
		for (const person of persons) {
			const viewer = await of.as(who[person])
			const [theirs, none] = [await tried(call, viewer, foreign), await tried(call, viewer, absent)]
			expect(['none', 'hidden'], person).toContain(outcome(none))
			if (viewer.is === 'contact' && person !== 'of another client') expect(theirs, person).toEqual(none)
		}
	})
})

describe('a contact’s question about another client is narrowed in the database itself', () => {
	const narrowed = /"(client_id|client"\."id)" in \(\?/

	test.each(all.filter(([, row]) => row.of === 'client'))('%s', async (_, { call }) => {
		const [foreign, viewer] = [await thingsOf('dental', 'dentalApprover'), await of.as('bakeryApprover')]
		const prepare = vi.spyOn(found(globalThis.doorsillDatabase).sqlite, 'prepare')
		await call(viewer, foreign, house)
		const asked = prepare.mock.calls.map(([sql]) => sql)
		prepare.mockRestore()
		expect(asked.filter((sql) => !narrowed.test(sql))).toEqual([])
	})
})
