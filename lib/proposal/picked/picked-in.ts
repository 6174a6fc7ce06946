import type { ContainerId } from '../../units/id'
import { take, type Wanted } from '../answer'
import type { Offer } from '../offer/offer'
import { keysOf, type Palettes } from './palettes'
import type { PlaceKeys } from './place-keys'

/** What a client has picked so far, as the address of the page carries it; no palette is picked beforehand. */
export type Picked = {
	readonly option: string | null
	readonly places: PlaceKeys
	readonly extras: readonly string[]
	readonly leftOut: readonly string[]
}

export type Chosen = Omit<Wanted, 'option'>
const nothing: Chosen = { places: {}, extras: [], leftOut: [] }

/** Palettes of single places, less those that are not offered or where nothing would stand. */
function placesIn(offer: Offer, { places }: Picked, leftOut: readonly ContainerId[]): PlaceKeys {
	const stays = offer.containers.filter(({ id }) => !leftOut.includes(id)).map(({ place }) => place)
	const named = stays.filter((id) => Object.hasOwn(places, id))
	const offered = named.filter((id) => offer.options.some(({ key }) => key === places[id]))
	return Object.fromEntries(offered.map((id) => [id, places[id] ?? '']))
}

export type Found = { readonly chosen: Chosen; readonly palettes: Palettes | undefined }

/** What was picked, less what is not offered: the address of a page may hold anything. */
export function pickedIn(offer: Offer, picked: Picked): Found {
	const [only, ...more] = offer.options
	const option = more.length === 0 ? only : offer.options.find(({ key }) => key === picked.option)
	const leftOut = offer.containers
		.filter(({ id, mayLeaveOut }) => mayLeaveOut && picked.leftOut.includes(id))
		.map(({ id }) => id)
	const extras = offer.extras.map(({ key }) => key).filter((key) => picked.extras.includes(key))
	const places = option === undefined ? {} : placesIn(offer, picked, leftOut)
	const key = option?.key ?? only?.key ?? ''
	const taken = take(offer, { option: key, places, extras, leftOut })
	if (!taken.ok) return { chosen: nothing, palettes: option && { option, places: new Map() } }
	return { chosen: { places: keysOf(taken), extras, leftOut }, palettes: option && taken }
}
