import { describe, expect, test } from 'vitest'
import { type AtKerb, addAtKerb } from '@/db/clients/places/add-at-kerb'
import { clientPage } from '@/db/clients/read-clients'
import { verify } from '@/db/record/verify'
import { round, trough } from '@/demo/cast/vessels'
import { must } from '@/demo/play/must'
import { SentBefore } from '@/lib/record/sent-before'
import { hex } from '@/lib/units/hex'
import { id } from '@/lib/units/id'
import { changesOf, refused } from '../stage/rows'
import { fillDisk, found, stranger, studio } from '../stage/studio'

const of = studio()
const none = '01999999-0000-7000-8000-00000000000a'
const hidden = { ok: false, why: 'hidden' }

const gate = {
	name: 'Garden gate',
	address: '9 Cooper’s Lane, Wrenholt',
	taxMilliPercent: 6250,
	driveMinutes: 12.5,
	zoneCents: null,
	wallKind: 'brick',
	wallHex: hex('#8b6353'),
	doorHex: null,
	hardinessZone: null,
	accessNote: '',
} as const
const bell = { name: 'bell', hex: hex('#b08d4f'), side: 'outside', spot: { x: 0.25, y: 0.75 } } as const
const latch = { name: 'latch', hex: hex('#24282a'), side: 'outside', spot: { x: 0.5, y: 0.125 } } as const
const pots = [round('Left of the gate', '#2f3336').card, trough('Under the sill', '#7a3a2e').card]

const written = (change: Partial<AtKerb> = {}): AtKerb => ({
	client: of.cast().clients.bakery.id,
	place: gate,
	containers: pots,
	colours: [bell, latch],
	...change,
})
const add = async (change: Partial<AtKerb> = {}, stamp = of.stamp()) =>
	addAtKerb(await of.as('designer'), written(change), stamp)
const placesOf = async () => found(await clientPage(await of.as('designer'), of.cast().clients.bakery.id)).places

describe('what was written down at the kerb', () => {
	test('is a new place after the others, its colours and its containers, each with its line of the record', async () => {
		const { said, did } = await changesOf(of.folder(), () => add())
		expect(did).toEqual({ container: '+2', event: '+3', place: '+1', site_colour: '+2' })
		const added = found((await placesOf()).at(-1))
		expect(added).toMatchObject({ ...gate, id: must('gate', said).place, position: 1 })
		expect(added.containers.map(({ name, position }) => [name, position])).toEqual([
			['Left of the gate', 0],
			['Under the sill', 1],
		])
		expect(added.colours.map(({ name, spotX, spotY }) => [name, spotX, spotY])).toEqual([
			['bell', 0.25, 0.75],
			['latch', 0.5, 0.125],
		])
		const acts = stranger(of.folder(), (sqlite) =>
			sqlite.prepare('SELECT act FROM event ORDER BY seq DESC LIMIT 3').pluck().all(),
		)
		expect(acts).toEqual(['container added', 'container added', 'place added'])
		expect(await verify(await of.as('designer'))).toMatchObject({ broken: null })
	})

	test('at a place that they have, comes after what stands there', async () => {
		const place = of.cast().places.bakery
		const { did } = await changesOf(of.folder(), () => add({ place, colours: [] }))
		expect(did).toEqual({ container: '+2', event: '+3' })
		expect((await placesOf())[0]?.containers.map(({ name }) => name)).toEqual([
			'Left of the door',
			'Right of the door',
			'Window box',
			'Left of the gate',
			'Under the sill',
		])
	})

	test('sent again, since its answer was lost, changes nothing a second time', async () => {
		const keyed = { ...of.stamp(), once: of.once() }
		const { did } = await changesOf(of.folder(), () => add({}, keyed))
		expect(did).toEqual({ container: '+2', event: '+3', once: '+1', place: '+1', site_colour: '+2' })
		const again = { ...of.stamp(), once: keyed.once }
		await refused(of.folder(), () => expect(add({}, again)).rejects.toThrow(SentBefore))
	})

	test.each(['place', 'site_colour', 'container', 'event', 'once'])(
		'is kept whole or not at all: no room in %s',
		async (table) => {
			fillDisk(of.folder(), table)
			const keyed = { ...of.stamp(), once: of.once() }
			await refused(of.folder(), () => expect(add({}, keyed)).rejects.toThrow('the disk is full'))
		},
	)

	test.each([
		['another client’s place', () => ({ place: of.cast().places.dental })],
		['a place that is not there', () => ({ place: id<'place'>(none) })],
		['a client who is not there', () => ({ client: id<'client'>(none) })],
	])('not under %s', async (_, change) => {
		expect(await refused(of.folder(), () => add(change()))).toEqual(hidden)
	})
})
