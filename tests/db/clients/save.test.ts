import { describe, expect, test } from 'vitest'
import { listClients } from '@/db/clients/list-clients'
import { clientPage } from '@/db/clients/read-clients'
import { saveClient } from '@/db/clients/save-client'
import { endContact, inviteContact } from '@/db/clients/save-contact'
import { saveContainer } from '@/db/clients/save-container'
import { addSiteColours, savePlace } from '@/db/clients/save-place'
import { round, trough } from '@/demo/cast/vessels'
import { must } from '@/demo/play/must'
import { day } from '@/lib/units/day'
import { hex } from '@/lib/units/hex'
import { type ClientId, id } from '@/lib/units/id'
import { changesOf, refused } from '../stage/rows'
import { found, stranger, studio } from '../stage/studio'

const of = studio()
const none = '01999999-0000-7000-8000-00000000000a'
const hidden = { ok: false, why: 'hidden' }

const designer = () => of.as('designer')
const bakery = () => of.cast().clients.bakery.id
const pageOf = async (client: ClientId) => found(await clientPage(await designer(), client))

const lodge = {
	kind: 'business',
	name: 'Saltmarsh Lodge',
	netDays: 15,
	exemptCertificate: 'EX-55120-L',
	exemptExpires: day('2027-08-31'),
	studioNote: 'Ring twice.',
} as const

describe('a client', () => {
	test('new, stands in the list with nothing yet', async () => {
		const viewer = await designer()
		const { said, did } = await changesOf(of.folder(), () => saveClient(viewer, null, lodge, of.stamp()))
		expect(did).toEqual({ client: '+1', event: '+1' })
		const row = { id: must('new', said).id, name: lodge.name, kind: lodge.kind, places: 0, containers: 0 }
		expect(await listClients(viewer)).toContainEqual(row)
		expect((await pageOf(row.id)).client).toEqual({ ...lodge, id: row.id, createdAt: of.cast().now, archivedAt: null })
	})

	test('changed, keeps its id and its day', async () => {
		const before = (await pageOf(bakery())).client
		must('change', await saveClient(await designer(), bakery(), lodge, of.stamp()))
		expect((await pageOf(bakery())).client).toEqual({ ...before, ...lodge })
	})

	test('that is not there is not made by a change', async () => {
		const viewer = await designer()
		const said = await refused(of.folder(), () => saveClient(viewer, id<'client'>(none), lodge, of.stamp()))
		expect(said).toEqual(hidden)
	})

	test('is listed by name, with its places and what stands there now', async () => {
		const list = await listClients(await designer())
		expect(list).toHaveLength(Object.keys(of.cast().clients).length)
		expect(list.map(({ name }) => name)).toEqual(list.map(({ name }) => name).toSorted())
		const union = of.cast().clients.creditUnion.id
		expect(list.find((row) => row.id === union)).toMatchObject({ places: 2, containers: 6 })
		stranger(of.folder(), (sqlite) =>
			sqlite.prepare("UPDATE container SET retired_at = 'now' WHERE id = ?").run(of.cast().containers.branchLeft),
		)
		expect((await listClients(await designer())).find((row) => row.id === union)).toMatchObject({
			places: 2,
			containers: 5,
		})
	})
})

describe('looked for', () => {
	const names = async (words: string) => (await listClients(await designer(), words)).map(({ name }) => name)

	test.each([
		['a name', 'lindquay', ['dental']],
		['a contact’s name', 'hester', ['fieldstone', 'vet']],
		['a contact’s address, in capitals', 'DESK@LINDQUAY', ['dental']],
		['words of two kinds', 'maud marrowby bakery', ['bakery']],
		['what nobody has', 'no such client', []],
	] as const)('by %s', async (_, words, keys) => {
		expect((await names(words)).toSorted()).toEqual(keys.map((key) => of.cast().clients[key].name).toSorted())
	})

	test('by a place and its address, with accents or without', async () => {
		stranger(of.folder(), (sqlite) =>
			sqlite.prepare("UPDATE place SET name = 'Café Ærø', address = '7 Łódź Row' WHERE client_id = ?").run(bakery()),
		)
		for (const words of ['cafe aero', 'CAFÉ', 'lodz row']) expect(await names(words)).toEqual(['Marrowby Bakery'])
	})

	test('not by a contact to whom the door was closed', async () => {
		const { name } = of.cast().people.bakeryViewer
		expect(await names(name)).toHaveLength(1)
		const contact = found((await pageOf(bakery())).contacts.find((each) => each.name === name)).id
		must('end', await endContact(await designer(), { client: bakery(), contact }, of.stamp()))
		expect(await names(name)).toEqual([])
	})

	test('by nothing, they are all there', async () => {
		expect(await names('  ')).toEqual(await names(''))
	})
})

test('the page of a client has every answer that was given, and who wrote it', async () => {
	const { clients, people } = of.cast()
	const { proposals } = await pageOf(clients.approved.id)
	const answers = proposals.flatMap((each) => each.answers)
	expect(answers.length).toBeGreaterThan(0)
	expect(answers[0]).toMatchObject({ kind: 'approval', word: 'client', by: people.approvedApprover.name })
	for (const { reference } of answers) expect(reference).toMatch(/^\d{4}-\d{4}$/)
	expect((await pageOf(clients.newcomer.id)).proposals.flatMap((each) => each.answers)).toEqual([])
})

describe('a contact', () => {
	const una = () =>
		({ client: bakery(), name: 'Una Marrowby', address: 'una@marrowbybakery.example', may: 'look' }) as const
	const invite = async (change: Partial<Parameters<typeof inviteContact>[1]> = {}) =>
		inviteContact(await designer(), { ...una(), ...change }, of.stamp())

	test('new, is a person with a handle of their own', async () => {
		const { said, did } = await changesOf(of.folder(), () => invite())
		expect(did).toEqual({ contact: '+1', event: '+1', outbox: '+1', person: '+1' })
		const { person } = must('una', said)
		const { contacts } = await pageOf(bakery())
		expect(contacts).toContainEqual({
			id: expect.any(String),
			name: 'Una Marrowby',
			address: una().address,
			may: 'look',
			elsewhere: [],
		})
		const handle = stranger(of.folder(), (sqlite) =>
			sqlite.prepare('SELECT handle FROM person WHERE id = ?').pluck().get(person),
		)
		expect(handle).toMatch(/^[\w-]{22}$/)
	})

	test('of another client too, is the same person by the same name', async () => {
		const { id: hester, address, name } = of.cast().people.twoDoors
		const { did } = await changesOf(of.folder(), () => invite({ address, name: 'H. K.' }))
		expect(did).toEqual({ contact: '+1', event: '+1', outbox: '+1' })
		expect((await pageOf(bakery())).contacts).toContainEqual(expect.objectContaining({ name }))
		expect(await of.as('twoDoors')).toMatchObject({ person: hester, clients: expect.objectContaining({ size: 3 }) })
	})

	test('invited again, has the new right, once', async () => {
		const { address, name } = of.cast().people.bakeryViewer
		const { did } = await changesOf(of.folder(), () => invite({ address, name, may: 'approve' }))
		expect(did).toEqual({ contact: '~1', event: '+1' })
		expect(await of.as('bakeryViewer')).toMatchObject({ clients: new Map([[bakery(), 'approve']]) })
	})

	test('new, hears by mail of what waits for an answer, and of nothing else', async () => {
		const mailTo = (person: string) =>
			stranger(of.folder(), (sqlite) =>
				sqlite.prepare('SELECT message, facts, not_before FROM outbox WHERE person_id = ?').all(person),
			)
		const { person } = must('una', await invite())
		const facts = `{"number":1,"proposal":"${of.cast().proposals.bakery}"}`
		expect(mailTo(person)).toEqual([{ message: 'proposal published', facts, not_before: of.cast().now }])
		const [address, client] = ['una@union.example', of.cast().clients.creditUnion.id]
		expect(mailTo(must('una', await invite({ address, client })).person)).toEqual([])
	})

	test('let in again after the door was closed, hears of it too', async () => {
		const { address, name } = of.cast().people.bakeryViewer
		const { contacts } = await pageOf(bakery())
		const { id: contact } = found(contacts.find((each) => each.address === address))
		must('end', await endContact(await designer(), { client: bakery(), contact }, of.stamp()))
		const { did } = await changesOf(of.folder(), () => invite({ address, name }))
		expect(did).toEqual({ contact: '~1', event: '+1', outbox: '+1' })
	})

	test('is nobody of the studio', async () => {
		const { address, name } = of.cast().people.helper
		const said = { ok: false, why: 'taken', who: 'staff', by: name }
		expect(await refused(of.folder(), () => invite({ address, name }))).toEqual(said)
	})

	test('is not somebody else with the address of one who is inside', async () => {
		const { address, name } = of.cast().people.bakeryViewer
		const said = { ok: false, why: 'taken', who: 'a contact here', by: name }
		expect(await refused(of.folder(), () => invite({ address, name: 'Una Marrowby', may: 'approve' }))).toEqual(said)
	})

	test('says which other doors are open to them', async () => {
		const { address } = of.cast().people.twoDoors
		const hester = async (client: ClientId) =>
			found((await pageOf(client)).contacts.find((each) => each.address === address))
		const { vet, fieldstone } = of.cast().clients
		expect((await hester(vet.id)).elsewhere).toEqual([fieldstone.name])
		expect((await hester(fieldstone.id)).elsewhere).toEqual([vet.name])
		const contact = (await hester(vet.id)).id
		must('end', await endContact(await designer(), { client: vet.id, contact }, of.stamp()))
		expect((await hester(fieldstone.id)).elsewhere).toEqual([])
	})

	test('of a client who is not there is not made', async () => {
		expect(await refused(of.folder(), () => invite({ client: id<'client'>(none) }))).toEqual(hidden)
	})

	test('is ended at their own client’s alone', async () => {
		const viewer = await designer()
		const contact = found((await pageOf(of.cast().clients.dental.id)).contacts[0]).id
		const wrong = { client: bakery(), contact }
		expect(await refused(of.folder(), () => endContact(viewer, wrong, of.stamp()))).toEqual(hidden)
		const right = { client: of.cast().clients.dental.id, contact }
		const { did } = await changesOf(of.folder(), () => endContact(viewer, right, of.stamp()))
		expect(did).toEqual({ contact: '~1', event: '+1' })
		const { contacts, gone } = await pageOf(right.client)
		expect(contacts.map((each) => each.id)).not.toContain(contact)
		expect(gone.map((each) => each.id)).toEqual([contact])
	})
})

const yard = {
	name: 'Yard',
	address: '6 Salt Steps, Wrenholt',
	taxMilliPercent: 6250,
	driveMinutes: 12.5,
	zoneCents: 1500,
	wallKind: 'brick',
	wallHex: hex('#8b6353'),
	doorHex: null,
	hardinessZone: 5.5,
	accessNote: 'Through the arch.',
} as const

describe('a place', () => {
	const save = async (place: Parameters<typeof savePlace>[1]['place'], client = bakery()) =>
		savePlace(await designer(), { client, place }, yard, of.stamp())

	test('new, comes after the others, with no container', async () => {
		const { said, did } = await changesOf(of.folder(), () => save(null))
		expect(did).toEqual({ event: '+1', place: '+1' })
		const added = (await pageOf(bakery())).places[1]
		expect(added).toEqual({
			id: must('yard', said).id,
			clientId: bakery(),
			position: 1,
			containers: [],
			colours: [],
			...yard,
		})
	})

	test('changed, keeps its containers and its colours', async () => {
		const [before] = (await pageOf(bakery())).places
		must('yard', await save(of.cast().places.bakery))
		expect((await pageOf(bakery())).places).toEqual([{ ...before, ...yard }])
	})

	test('is changed under its own client alone', async () => {
		expect(await refused(of.folder(), () => save(of.cast().places.dental))).toEqual(hidden)
		expect(await refused(of.folder(), () => save(null, id<'client'>(none)))).toEqual(hidden)
	})

	test('takes a colour, after those that it has; no other client’s place does', async () => {
		const viewer = await designer()
		const bell = { name: 'bell', hex: hex('#b08d4f'), side: 'outside' } as const
		must('bell', await addSiteColours(viewer, { client: bakery(), place: of.cast().places.bakery }, [bell], of.stamp()))
		expect((await pageOf(bakery())).places[0]?.colours.map(({ name, position }) => [name, position])).toEqual([
			['baking pans', 0],
			['awning', 1],
			['door brass', 2],
			['bell', 3],
		])
		const wrong = { client: bakery(), place: of.cast().places.dental }
		expect(await refused(of.folder(), () => addSiteColours(viewer, wrong, [bell], of.stamp()))).toEqual(hidden)
	})
})

describe('a container', () => {
	const where = (change: Partial<Parameters<typeof saveContainer>[1]> = {}) => ({
		client: bakery(),
		place: of.cast().places.bakery,
		container: null,
		...change,
	})
	const save = async (at: Parameters<typeof saveContainer>[1], card = trough('By the till', '#2f3336').card) =>
		saveContainer(await designer(), at, card, of.stamp())

	test('new, comes after the others, with its whole card', async () => {
		const { said, did } = await changesOf(of.folder(), () => save(where()))
		expect(did).toEqual({ container: '+1', event: '+1' })
		const here = { id: must('till', said).id, placeId: of.cast().places.bakery, position: 3, retiredAt: null }
		expect((await pageOf(bakery())).places[0]?.containers[3]).toEqual({
			...trough('By the till', '#2f3336').card,
			...here,
		})
	})

	test('changed, keeps its place in the row', async () => {
		must('left', await save(where({ container: of.cast().containers.bakeryLeft }), round('Left, new', '#101214').card))
		expect((await pageOf(bakery())).places[0]?.containers.map(({ name }) => name)).toEqual([
			'Left, new',
			'Right of the door',
			'Window box',
		])
	})

	test.each([
		['another client’s container', () => where({ container: of.cast().containers.dentalLeft })],
		['another client’s place', () => where({ place: of.cast().places.dental })],
		[
			'another client’s place and container',
			() => where({ place: of.cast().places.dental, container: of.cast().containers.dentalLeft }),
		],
		['a place that is not there', () => where({ place: id<'place'>(none) })],
		['a container that is not there', () => where({ container: id<'container'>(none) })],
	])('not under %s', async (_, at) => {
		expect(await refused(of.folder(), () => save(at()))).toEqual(hidden)
	})

	test('that could not hold soil is refused by the record itself', async () => {
		const card = { ...round('Solid', '#101214').card, wallCm: 40 }
		await refused(of.folder(), () => expect(save(where(), card)).rejects.toThrow('container_wall_thickness'))
	})

	test('that is retired is on no page', async () => {
		stranger(of.folder(), (sqlite) =>
			sqlite.prepare("UPDATE container SET retired_at = 'now' WHERE id = ?").run(of.cast().containers.bakeryRight),
		)
		expect((await pageOf(bakery())).places[0]?.containers.map(({ name }) => name)).toEqual([
			'Left of the door',
			'Window box',
		])
	})
})

test('a client’s page has their proposals, the newest season first', async () => {
	const answers = [expect.objectContaining({ kind: 'approval', by: of.cast().people.bakeryApprover.name })]
	expect((await pageOf(bakery())).proposals).toEqual([
		{ id: of.cast().proposals.bakery, quarter: 'winter', year: 2026, state: 'waiting for an answer', answers: [] },
		{ id: of.cast().autumn.bakery, quarter: 'autumn', year: 2026, state: 'installed', answers },
	])
	expect(await clientPage(await designer(), id<'client'>(none))).toBeUndefined()
})
