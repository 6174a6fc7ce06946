import { daySpan, longDay, shortDay } from '../../format/day'
import type { MoneyFormat } from '../../format/money'
import { quote } from '../../pricing/quote/quote'
import type { ContainerId } from '../../units/id'
import type { Wanted } from '../answer'
import { type Palettes, paletteAt, palettesInWords, pricesOf } from '../picked/palettes'
import { type Chosen, type Found, type Picked, pickedIn } from '../picked/picked-in'
import { placeName } from '../picked/place-name'
import { type Change, changes } from './changes'
import type { Offer, OfferOption } from './offer'
import { extraCents } from './offered-prices'
import { pickedCautions } from './picked-cautions'
import { offerMoney, type PriceView, priceView } from './price-view'
import { type Layer, layers } from './summary'

export type OptionView = {
	readonly key: string
	readonly name: string
	readonly palette: OfferOption['palette']
	readonly total: string
	readonly isOnWall: boolean
	/** Where it stands, while not every place takes the same. */
	readonly at: readonly string[]
}
/** A place where something stays, and the key of the option that it takes; null while none is picked. */
export type PlaceView = { readonly id: string; readonly name: string; readonly option: string | null }
export type PotView = {
	readonly id: string
	readonly name: string
	readonly words: string
	readonly layers: readonly Layer[]
	readonly isOut: boolean
	readonly mayLeaveOut: boolean
}
export type ExtraView = {
	readonly key: string
	readonly name: string
	readonly words: string
	readonly price: string
	readonly isAdded: boolean
}

/** Pots that hold the same, told once. */
export type PotGroup = {
	readonly names: readonly string[]
	readonly words: readonly string[]
	readonly layers: readonly Layer[]
}

/** A client's page in finished words and figures: nothing on it is computed any more. */
export type OfferView = {
	readonly offer: Offer
	readonly options: readonly OptionView[]
	/** The palette on the wall: the only one, or the one that was picked; where places differ, that of the first. */
	readonly onWall: OptionView | undefined
	/** All that is picked, in words: "Brass and navy; Frost and violet at Boathouse". */
	readonly palette: string | undefined
	readonly places: readonly PlaceView[]
	readonly pots: readonly PotView[]
	readonly potGroups: readonly PotGroup[]
	readonly extras: readonly ExtraView[]
	readonly price: PriceView | undefined
	/** Of what is picked; of all that is offered while nothing is. */
	readonly cautions: readonly string[]
	readonly answerBy: string
	readonly answerByLong: string
	readonly goesIn: string
	readonly changes: readonly Change[]
	readonly picked: Wanted | undefined
	/** Extras added and containers left out, whether or not a palette is picked, and what single places take. */
	readonly chosen: Chosen
}

function extraViews(offer: Offer, option: OfferOption | undefined, added: readonly string[]): ExtraView[] {
	const list = option?.prices ?? offer.options[0]?.prices
	const money = offerMoney(offer)
	return offer.extras.map(({ key, name, words }) => {
		const amount = list && extraCents(list, key)
		return { key, name, words, price: amount === undefined ? '' : money(amount), isAdded: added.includes(key) }
	})
}

function potViews({ containers }: Offer, palettes: Palettes | undefined, leftOut: readonly ContainerId[]): PotView[] {
	return containers.map(({ id, place, name, words, mayLeaveOut }) => {
		const pots = palettes === undefined ? [] : paletteAt(palettes, place).pots
		const lines = pots.find(({ container }) => container === id)?.lines ?? []
		return { id, name, words, layers: layers(lines), isOut: leftOut.includes(id), mayLeaveOut }
	})
}

function placeViews(offer: Offer, palettes: Palettes | undefined, leftOut: readonly ContainerId[]): PlaceView[] {
	const staying = offer.containers.filter(({ id }) => !leftOut.includes(id))
	return offer.places
		.filter(({ id }) => staying.some(({ place }) => place === id))
		.map(({ id }) => ({
			id,
			name: placeName(id, offer),
			option: palettes === undefined ? null : paletteAt(palettes, id).key,
		}))
}

function optionViews(offer: Offer, found: Found, places: readonly PlaceView[], money: MoneyFormat): OptionView[] {
	const { chosen, palettes } = found
	const isMixed = new Set(places.map(({ option }) => option)).size > 1
	return offer.options.map(({ key, name, palette, prices }) => ({
		...{ key, name, palette },
		total: money(quote(prices, chosen).totalCents),
		isOnWall: key === palettes?.option.key,
		at: isMixed ? places.filter(({ option }) => option === key).map((place) => place.name) : [],
	}))
}

function grouped(pots: readonly PotView[]): PotGroup[] {
	const groups = new Map<string, PotView[]>()
	for (const pot of pots.filter(({ isOut }) => !isOut)) {
		const key = JSON.stringify(pot.layers)
		groups.set(key, [...(groups.get(key) ?? []), pot])
	}
	return [...groups.values()].map((same) => ({
		names: same.map(({ name }) => name),
		words: [...new Set(same.map(({ words }) => words))],
		layers: same[0]?.layers ?? [],
	}))
}

/** `before` is the revision that came before, when there was one. */
export function offerView(offer: Offer, before: Offer | undefined, picked: Picked): OfferView {
	const found = pickedIn(offer, picked)
	const { chosen, palettes } = found
	const money = offerMoney(offer)
	const places = placeViews(offer, palettes, chosen.leftOut)
	const options = optionViews(offer, found, places, money)
	const pots = potViews(offer, palettes, chosen.leftOut)
	return {
		offer,
		options,
		onWall: options.find(({ isOnWall }) => isOnWall),
		palette: palettes && palettesInWords(offer, palettes),
		places,
		pots,
		potGroups: grouped(pots),
		extras: extraViews(offer, palettes?.option, chosen.extras),
		price: palettes && priceView(offer, quote(pricesOf(palettes), chosen), money),
		cautions: pickedCautions(offer, palettes, chosen),
		answerBy: shortDay(offer.answerBy),
		answerByLong: longDay(offer.answerBy),
		goesIn: daySpan(offer.window.from, offer.window.to),
		changes: before === undefined ? [] : changes(before, offer, money),
		picked: palettes && { option: palettes.option.key, ...chosen },
		chosen,
	}
}
