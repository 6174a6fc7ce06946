import { saveClient } from '@/db/clients/save-client'
import { inviteContact } from '@/db/clients/save-contact'
import { saveContainer } from '@/db/clients/save-container'
import { addSiteColours, savePlace } from '@/db/clients/save-place'
import type { Stamp } from '@/db/stamp'
import type { Viewer } from '@/lib/access/viewer'
import { addDays } from '@/lib/units/day'
import { hex } from '@/lib/units/hex'
import { type CastClient, type ClientKey, clients } from '../cast/clients'
import { doors, people } from '../cast/people'
import { type CastContainer, type ContainerKey, containers } from '../cast/sites/containers'
import { type PlaceKey, places } from '../cast/sites/places'
import type { CastPlace } from '../cast/sites/shape'
import { entriesOf } from './keys'
import { must } from './must'
import type { Stage } from './stage'
import { type Act, momentOn } from './timeline'

type By = { readonly stage: Stage; readonly designer: Viewer; readonly stamp: Stamp }

async function keepClient(key: ClientKey, of: CastClient, { stage, designer, stamp }: By): Promise<void> {
	const { exempt, studioNote, ...plain } = of
	const fields = {
		...plain,
		exemptCertificate: exempt?.certificate ?? null,
		exemptExpires: exempt === undefined ? null : addDays(stage.today, exempt.expiresIn),
		studioNote: stage.tell('studio-note', key, studioNote),
	}
	stage.clients.put(key, must(of.name, await saveClient(designer, null, fields, stamp)).id)
}

async function inviteAll(key: ClientKey, { stage, designer, stamp }: By): Promise<void> {
	for (const [, person, may] of doors.filter(([client]) => client === key)) {
		const invitation = { client: stage.clients.of(key), ...people[person], may }
		stage.people.put(person, must(person, await inviteContact(designer, invitation, stamp)).person)
	}
}

async function keepContainers(at: PlaceKey, { stage, designer, stamp }: By): Promise<void> {
	for (const [key, { place, card }] of entriesOf<Record<ContainerKey, CastContainer>>(containers)) {
		if (place !== at) continue
		const where = { client: stage.clients.of(places[at].client), place: stage.places.of(at), container: null }
		stage.containers.put(key, must(key, await saveContainer(designer, where, card, stamp)).id)
	}
}

/** A harbour keeps its frosts mild: 6b. */
const harbourZone = 6.5

async function keepPlace(key: PlaceKey, of: CastPlace, by: By): Promise<void> {
	const { stage, designer, stamp } = by
	const client = stage.clients.of(of.client)
	const fields = {
		name: of.name,
		address: of.address,
		taxMilliPercent: of.taxMilliPercent,
		driveMinutes: of.driveMinutes,
		zoneCents: of.zoneCents ?? null,
		wallKind: of.wall[0],
		wallHex: hex(of.wall[1]),
		doorHex: of.door === null ? null : hex(of.door),
		hardinessZone: harbourZone,
		accessNote: of.access,
	}
	const { id } = must(key, await savePlace(designer, { client, place: null }, fields, stamp))
	stage.places.put(key, id)
	for (const [name, colour, side] of of.colours)
		must(name, await addSiteColours(designer, { client, place: id }, [{ name, hex: hex(colour), side }], stamp))
	await keepContainers(key, by)
}

async function keepPlaces(of: ClientKey, by: By): Promise<void> {
	for (const [key, place] of entriesOf<Record<PlaceKey, CastPlace>>(places))
		if (place.client === of) await keepPlace(key, place, by)
}

/** One client a day, each with contacts, places and what stands there; the newcomer came last week. */
export const arrivals = (stage: Stage): Act[] =>
	entriesOf<Record<ClientKey, CastClient>>(clients).map(([key, of], index) => ({
		at: momentOn(stage.today, key === 'newcomer' ? -6 : index - 130, '15:05'),
		run: async (stamp) => {
			const by = { stage, designer: await stage.designer(), stamp }
			await keepClient(key, of, by)
			await inviteAll(key, by)
			await keepPlaces(key, by)
		},
	}))
