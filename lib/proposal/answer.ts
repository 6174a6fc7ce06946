import type { Choice } from '../pricing/quote/choice'
import { type Quote, quote } from '../pricing/quote/quote'
import type { ContainerId } from '../units/id'
import type { Offer } from './offer/offer'
import { type Palettes, palettesOf, pricesOf, settled } from './picked/palettes'
import type { PlaceKeys } from './picked/place-keys'

/** What a client takes: an option by its key, another at some places, extras by their keys, containers left out by id. */
export type Wanted = {
	readonly option: string
	readonly places: PlaceKeys
	readonly extras: readonly string[]
	readonly leftOut: readonly ContainerId[]
}

export type NotOffered =
	| 'that palette is not offered'
	| 'that extra is not offered'
	| 'that place is not in the design'
	| 'that palette belongs where everything is left out'
	| 'that container may not be left out'
	| 'nothing would be left'
	| 'that part is not in the design'
	| 'that extra belongs where everything is left out'

export type Taken =
	| ({ readonly ok: true; readonly choice: Choice; readonly quote: Quote } & Palettes)
	| { readonly ok: false; readonly why: NotOffered }

const refuse = (why: NotOffered): Taken => ({ ok: false, why })

/** Places where a container stays. */
function kept({ containers }: Offer, out: ReadonlySet<string>): ReadonlySet<string> {
	return new Set(containers.filter(({ id }) => !out.has(id)).map(({ place }) => place))
}

/** Why an extra is not to be had, or a palette at a place; null when all are. */
function notAt(offer: Offer, { extras, places }: Wanted, stays: ReadonlySet<string>): NotOffered | null {
	for (const id of Object.keys(places)) {
		if (!offer.places.some((each) => each.id === id)) return 'that place is not in the design'
		if (!stays.has(id)) return 'that palette belongs where everything is left out'
	}
	for (const key of extras) {
		const extra = offer.extras.find((each) => each.key === key)
		if (extra === undefined) return 'that extra is not offered'
		if (!stays.has(extra.place)) return 'that extra belongs where everything is left out'
	}
	return null
}

/** Holds what a client wants against what was offered, and prices it from the frozen lists. */
export function take(offer: Offer, wanted: Wanted): Taken {
	const named = palettesOf(offer, wanted)
	if (named === undefined) return refuse('that palette is not offered')
	const out = new Set(wanted.leftOut)
	for (const id of out)
		if (!offer.containers.some((each) => each.id === id && each.mayLeaveOut))
			return refuse('that container may not be left out')
	const stays = kept(offer, out)
	if (stays.size === 0) return refuse('nothing would be left')
	const why = notAt(offer, wanted, stays)
	if (why !== null) return refuse(why)
	const palettes = settled(offer, named, stays)
	const choice: Choice = { leftOut: [...out], extras: [...new Set(wanted.extras)] }
	return { ok: true, ...palettes, choice, quote: quote(pricesOf(palettes), choice) }
}
