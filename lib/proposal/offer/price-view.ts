import type { MoneyFormat } from '../../format/money'
import type { Quote, QuoteLine } from '../../pricing/quote/quote'
import { type Cents, cents } from '../../units/cents'
import { placeName } from '../picked/place-name'
import { dueInWords } from './due-words'
import type { Offer } from './offer'

/** `key` tells rows apart that read alike. */
export type PriceRow = { readonly key: string; readonly label: string; readonly amount: string }

/** A quote in the words and figures that a client reads. */
export type PriceView = {
	readonly rows: readonly PriceRow[]
	readonly taxes: readonly PriceRow[]
	readonly notes: readonly string[]
	readonly total: string
	readonly due: string
}

const isTwin = (name: string, { containers, extras }: Offer) =>
	[...containers, ...extras].filter((each) => each.name === name).length > 1

/** What a client reads. Containers and extras of the same name are told apart by place and kind. */
function labelOf(line: QuoteLine, offer: Offer): string {
	const at = offer.places.length < 2 ? '' : `, ${placeName(line.place, offer)}`
	switch (line.is) {
		case 'container':
			return isTwin(line.name, offer) ? `${line.name}${at}` : line.name
		case 'extra':
			return isTwin(line.name, offer) ? `Extra “${line.name}”${at}` : line.name
		case 'travel':
		case 'disposal':
			return `Taking out, delivery and set-up${at}`
		case 'take-down':
			return `Taking down at the end${at}`
		case 'soil':
			return `Soil${at}`
		case 'design':
			return 'Design'
		case 'season':
			return `The season, by your agreement${at}`
		case 'supplement':
			return 'Supplement for the palette'
		case 'minimum visit':
			return `Up to the least price of a visit${at}`
		default:
			return line satisfies never
	}
}

/** Lines of one key are one to a client, and are added up: what comes with a visit, never two things that are put in. */
function keyOf(line: QuoteLine): string {
	if (line.is === 'container') return `container ${line.container}`
	if (line.is === 'extra') return `extra ${line.extra}`
	const isOfAll = line.is === 'design' || line.is === 'supplement'
	return `${line.is === 'disposal' ? 'travel' : line.is} ${isOfAll ? 'everywhere' : line.place}`
}

const order: Record<QuoteLine['is'], number> = {
	season: 0,
	supplement: 1,
	container: 2,
	extra: 3,
	design: 4,
	soil: 5,
	travel: 6,
	disposal: 6,
	'take-down': 7,
	'minimum visit': 8,
}

/** The rows of the client's page: containers in the offer's order, then what comes with the visit. */
function rowsOf({ lines }: Quote, offer: Offer, money: MoneyFormat): PriceRow[] {
	const place = new Map<string, number>(offer.containers.map(({ id }, index) => [id, index]))
	const rank = (line: QuoteLine) => order[line.is] * 1000 + ('container' in line ? (place.get(line.container) ?? 0) : 0)
	const sums = new Map<string, { label: string; amount: Cents }>()
	for (const line of lines.toSorted((a, b) => rank(a) - rank(b))) {
		const key = keyOf(line)
		const amount = cents((sums.get(key)?.amount ?? 0) + line.cents)
		sums.set(key, { label: labelOf(line, offer), amount })
	}
	return [...sums].map(([key, { label, amount }]) => ({ key, label, amount: money(amount) }))
}

const percent = (milli: number) => `${milli / 1000} %`

/** Whose tax it is, where the agreement's bill and the one beside it both have some. */
function taxesOf({ tax }: Quote, money: MoneyFormat): PriceRow[] {
	const hasBoth = new Set(tax.map(({ bill }) => bill)).size > 1
	return tax.map(({ bill, milliPercent, baseCents, cents: amount }) => {
		const on = bill === 'agreement' ? ' on the season' : ' on the rest'
		const label = `Sales tax${hasBoth ? on : ''}, ${percent(milliPercent)} of ${money(baseCents)}`
		return { key: `tax ${bill} ${milliPercent}`, label, amount: money(amount) }
	})
}

function notesOf({ discountPercent, exemptCertificate }: Quote): string[] {
	return [
		...(discountPercent > 0
			? [`The prices of containers and extras are after your agreement’s discount of ${discountPercent} %.`]
			: []),
		...(exemptCertificate === null ? [] : [`No sales tax: exempt, certificate ${exemptCertificate}.`]),
	]
}

export function priceView(offer: Offer, quote: Quote, money: MoneyFormat): PriceView {
	return {
		rows: rowsOf(quote, offer, money),
		taxes: taxesOf(quote, money),
		notes: notesOf(quote),
		total: money(quote.totalCents),
		due: dueInWords(quote.due, money),
	}
}
