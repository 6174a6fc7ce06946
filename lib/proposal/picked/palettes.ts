import { list } from '../../format/words'
import type { PriceList } from '../../pricing/price-list'
import { mixedList } from '../../pricing/quote/mixed-list'
import type { PlaceId } from '../../units/id'
import type { Offer, OfferOption } from '../offer/offer'
import type { PlaceKeys } from './place-keys'
import { placeName } from './place-name'

/** What is taken: an option, and another at some places, in the order of their ids. */
export type Palettes = {
	readonly option: OfferOption
	readonly places: ReadonlyMap<PlaceId, OfferOption>
}

export const paletteAt = ({ option, places }: Palettes, place: PlaceId): OfferOption => places.get(place) ?? option

/** Undefined when an option is not offered; a place that is not in the offer takes nothing. */
export function palettesOf(
	{ options, places }: Pick<Offer, 'options' | 'places'>,
	wanted: { readonly option: string | null; readonly places: PlaceKeys },
): Palettes | undefined {
	const found = (key: string | null) => options.find((each) => each.key === key)
	const option = found(wanted.option)
	const named = places.flatMap(({ id }) =>
		Object.hasOwn(wanted.places, id) ? [[id, found(wanted.places[id] ?? null)] as const] : [],
	)
	const others = named.flatMap(([id, other]) => (other === undefined ? [] : [[id, other] as const]))
	if (option === undefined || others.length < named.length) return undefined
	return { option, places: new Map(others.toSorted(([a], [b]) => (a < b ? -1 : 1))) }
}

/**
 * The same choice written in its one way: the option is that of the first place of the offer where something stays, and
 * the others are told where they differ from it.
 */
export function settled({ places }: Pick<Offer, 'places'>, taken: Palettes, stays: ReadonlySet<string>): Palettes {
	const first = places.find(({ id }) => stays.has(id))
	const option = first === undefined ? taken.option : paletteAt(taken, first.id)
	const others = places
		.filter(({ id }) => stays.has(id))
		.map(({ id }) => [id, paletteAt(taken, id)] as const)
		.filter(([, other]) => other.key !== option.key)
	return { option, places: new Map(others.toSorted(([a], [b]) => (a < b ? -1 : 1))) }
}

/** What the total follows from. */
export const pricesOf = (taken: Palettes): PriceList =>
	taken.places.size === 0
		? taken.option.prices
		: mixedList(taken.option.prices, (place) => paletteAt(taken, place).prices)

export const keysOf = ({ places }: Palettes): PlaceKeys =>
	Object.fromEntries([...places].map(([id, { key }]) => [id, key]))

/** "Brass and navy; Frost and violet at Boathouse" */
export function palettesInWords(offer: Pick<Offer, 'options' | 'places'>, { option, places }: Palettes): string {
	const at = (key: string) =>
		offer.places.filter(({ id }) => places.get(id)?.key === key).map(({ id }) => placeName(id, offer))
	const others = offer.options.filter(({ key }) => at(key).length > 0)
	return [option.name, ...others.map(({ key, name }) => `${name} at ${list(at(key))}`)].join('; ')
}
