import { daySpan, longDay, shortDay } from '../../format/day'
import { moneyFormat } from '../../format/money'
import { quote } from '../../pricing/quote/quote'
import type { ContainerId } from '../../units/id'
import { take, type Wanted } from '../answer'
import { type Change, changes } from './changes'
import type { Offer, OfferOption } from './offer'
import { extraCents } from './offered-prices'
import { pickedCautions } from './picked-cautions'
import { type PriceView, priceView } from './price-view'
import { type Layer, layers } from './summary'

/** What a client has picked so far, as the address of the page carries it; no palette is picked beforehand. */
export type Picked = {
	readonly option: string | null
	readonly extras: readonly string[]
	readonly leftOut: readonly string[]
}

export type OptionView = {
	readonly key: string
	readonly name: string
	readonly palette: OfferOption['palette']
	readonly total: string
	readonly isOnWall: boolean
}
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
	/** The palette on the wall: the only one, or the one that was picked. */
	readonly onWall: OptionView | undefined
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
	/** Extras added and containers left out, whether or not a palette is picked. */
	readonly chosen: Omit<Wanted, 'option'>
}

/** What was picked, less what is not offered: the address of a page may hold anything. */
function wantedOf(offer: Offer, picked: Picked): { wanted: Omit<Wanted, 'option'>; option: OfferOption | undefined } {
	const [only, ...more] = offer.options
	const option = more.length === 0 ? only : offer.options.find(({ key }) => key === picked.option)
	const leftOut = offer.containers
		.filter(({ id, mayLeaveOut }) => mayLeaveOut && picked.leftOut.includes(id))
		.map(({ id }) => id)
	const extras = offer.extras.map(({ key }) => key).filter((key) => picked.extras.includes(key))
	const wanted = { extras, leftOut }
	const probe = only === undefined ? undefined : take(offer, { option: option?.key ?? only.key, ...wanted })
	return { option, wanted: probe?.ok ? wanted : { extras: [], leftOut: [] } }
}

function extraViews(offer: Offer, option: OfferOption | undefined, added: readonly string[]): ExtraView[] {
	const list = option?.prices ?? offer.options[0]?.prices
	const money = moneyFormat(list?.currency ?? 'USD')
	return offer.extras.map(({ key, name, words }) => {
		const amount = list && extraCents(list, key)
		return { key, name, words, price: amount === undefined ? '' : money(amount), isAdded: added.includes(key) }
	})
}

function potViews({ containers }: Offer, option: OfferOption | undefined, leftOut: readonly ContainerId[]): PotView[] {
	return containers.map(({ id, name, words, mayLeaveOut }) => {
		const lines = option?.pots.find(({ container }) => container === id)?.lines ?? []
		return { id, name, words, layers: layers(lines), isOut: leftOut.includes(id), mayLeaveOut }
	})
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
	const { option, wanted } = wantedOf(offer, picked)
	const money = moneyFormat(offer.options[0]?.prices.currency ?? 'USD')
	const total = ({ prices }: OfferOption) => quote(prices, wanted)
	const options = offer.options.map((each) => ({
		key: each.key,
		name: each.name,
		palette: each.palette,
		total: money(total(each).totalCents),
		isOnWall: each.key === option?.key,
	}))
	const pots = potViews(offer, option, wanted.leftOut)
	return {
		offer,
		options,
		onWall: options.find(({ isOnWall }) => isOnWall),
		pots,
		potGroups: grouped(pots),
		extras: extraViews(offer, option, wanted.extras),
		price: option && priceView(offer, total(option), money),
		cautions: pickedCautions(offer, option, wanted),
		answerBy: shortDay(offer.answerBy),
		answerByLong: longDay(offer.answerBy),
		goesIn: daySpan(offer.window.from, offer.window.to),
		changes: before === undefined ? [] : changes(before, offer, money),
		picked: option && { option: option.key, ...wanted },
		chosen: wanted,
	}
}
