import { daySpan, fullDay } from '../../format/day'
import { moneyFormat } from '../../format/money'
import { list } from '../../format/words'
import { quote } from '../../pricing/quote/quote'
import type { Day } from '../../units/day'
import { palettesInWords, palettesOf, pricesOf } from '../picked/palettes'
import type { PlaceKeys } from '../picked/place-keys'
import type { Offer } from './offer'
import { type PriceView, priceView } from './price-view'

/** An approval as it was given. */
export type Approved = {
	readonly reference: string
	readonly on: Day
	/** "by Maud Marrowby" */
	readonly by: string
	readonly option: string | null
	readonly places: PlaceKeys
	readonly extras: readonly string[]
	readonly leftOut: readonly string[]
	readonly purchaseOrder: string
}

export type Receipt = {
	readonly rows: readonly { readonly label: string; readonly value: string }[]
	readonly price: PriceView
}

const named = (label: string, names: readonly string[]) =>
	names.length === 0 ? [] : [{ label, value: list([...names]) }]

/** A record for the books: for whom, who approved what and when, and every line of the price; undefined for a palette that was not offered. */
export function receipt(offer: Offer, given: Approved): Receipt | undefined {
	const palettes = palettesOf(offer, given)
	if (palettes === undefined) return undefined
	const out = offer.containers.filter(({ id }) => given.leftOut.includes(id))
	const added = offer.extras.filter(({ key }) => given.extras.includes(key))
	const choice = { extras: added.map(({ key }) => key), leftOut: out.map(({ id }) => id) }
	const total = quote(pricesOf(palettes), choice)
	return {
		rows: [
			{ label: 'Reference', value: given.reference },
			{ label: 'For', value: [offer.client, ...offer.places.map(({ address }) => address)].join(', ') },
			{ label: 'Approved', value: `${given.by}, ${fullDay(given.on)}` },
			...(given.purchaseOrder === '' ? [] : [{ label: 'Purchase order', value: given.purchaseOrder }]),
			{ label: 'Palette', value: palettesInWords(offer, palettes) },
			...named(
				'Extras',
				added.map(({ name }) => name),
			),
			...named(
				'Left out',
				out.map(({ name }) => name),
			),
			{ label: 'Goes in', value: daySpan(offer.window.from, offer.window.to) },
		],
		price: priceView(offer, total, moneyFormat(total.currency)),
	}
}
