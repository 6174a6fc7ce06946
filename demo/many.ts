import { saveClient } from '@/db/clients/save-client'
import { inviteContact } from '@/db/clients/save-contact'
import { saveContainer } from '@/db/clients/save-container'
import { addSiteColours, savePlace } from '@/db/clients/save-place'
import type { Stamp } from '@/db/stamp'
import type { Viewer } from '@/lib/access/viewer'
import { hex } from '@/lib/units/hex'
import type { ClientId } from '@/lib/units/id'
import { round, smallRound, square, urn, type Vessel, windowBox } from './cast/vessels'
import { must } from './play/must'

const families = [
	'Thistlemere',
	'Quillhaven',
	'Brackwater',
	'Saltmarrow',
	'Emberlow',
	'Fenwickle',
	'Hollowby',
	'Larken',
]
const trades = ['Tea Room', 'Ironmongery', 'Framing', 'Grocery', 'household']
/** Nobody is anybody's neighbour. */
const streets = ['Lane', 'Row', 'Quay', 'Steps', 'Yard']
const fronts = [
	['clapboard', '#5f7488', '#24365a', 'door', '#24365a'],
	['brick', '#8b4a3a', '#2f3e34', 'door brass', '#b08d4a'],
	['stucco', '#d9d2c3', '#7a3a2e', 'roof', '#a5512b'],
	['fieldstone', '#8c8a84', '#3d6147', 'lanterns', '#34373a'],
	['shop glass', '#3b3f42', '#6a2f4b', 'awning', '#6a2f4b'],
] as const

const pots: readonly (readonly Vessel[])[] = [
	[round('Left of the door', '#2f3336'), round('Right of the door', '#2f3336')],
	[urn('Left urn', '#3a3b3b', { stands: 'against a wall' }), urn('Right urn', '#3a3b3b', { stands: 'against a wall' })],
	[square('By the gate', '#d9d5cb', { stands: 'in a corner', light: 'sun' })],
	[round('At the step', '#6a4a33', { light: 'shade' }), windowBox('Window box', '#5b4636', { limitedWeight: 'none' })],
	[smallRound('Left pot', '#9c5a3c', { outletNear: false }), smallRound('Right pot', '#9c5a3c', { outletNear: false })],
]

/** The item that an index falls on, round and round. @throws of an empty list */
function nth<T>(items: readonly T[], index: number): T {
	const found = items[index % items.length]
	if (found === undefined) throw new Error('nth: there is nothing to choose from')
	return found
}

async function arrive(designer: Viewer, index: number, stamp: Stamp): Promise<ClientId> {
	const family = nth(families, Math.floor(index / trades.length))
	const trade = nth(trades, index)
	const kind = trade === 'household' ? 'household' : 'business'
	const name = `${kind === 'household' ? `The ${family}` : family} ${trade}`
	const none = { exemptCertificate: null, exemptExpires: null, studioNote: '' }
	const { id: client } = must(name, await saveClient(designer, null, { kind, name, netDays: 30, ...none }, stamp))
	const address = `door${index}@${family.toLowerCase()}.example`
	must(name, await inviteContact(designer, { client, name: `Ada ${family}`, address, may: 'approve' }, stamp))
	const [wallKind, wall, door, colour, seen] = nth(fronts, index + Math.floor(index / 5))
	const site = { taxMilliPercent: 6000, driveMinutes: 5 + (index % 17), zoneCents: null, hardinessZone: 6.5 }
	const walls = { wallKind, wallHex: hex(wall), doorHex: hex(door), accessNote: '' }
	const fields = { name: 'Front door', address: `4 ${family} ${nth(streets, index)}`, ...site, ...walls }
	const { id: place } = must(name, await savePlace(designer, { client, place: null }, fields, stamp))
	must(
		name,
		await addSiteColours(designer, { client, place }, [{ name: colour, hex: hex(seen), side: 'outside' }], stamp),
	)
	for (const { card } of nth(pots, index))
		must(name, await saveContainer(designer, { client, place, container: null }, card, stamp))
	return client
}

/** Clients beside the cast, each with somebody who may approve, a front and what stands before it; none begun. */
export async function manyClients(designer: Viewer, count: number, stamp: Stamp): Promise<ClientId[]> {
	const made: ClientId[] = []
	for (let index = 0; index < count; index += 1) made.push(await arrive(designer, index, stamp))
	return made
}
