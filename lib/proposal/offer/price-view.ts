import type { MoneyFormat } from '../../format/money'
import type { Quote, QuoteLine } from '../../pricing/quote/quote'
import { type Cents, cents } from '../../units/cents'
import { dueInWords } from './due-words'
import type { Offer } from './offer'

export type PriceRow = { readonly label: string; readonly amount: string }

/** A quote in the words and figures that a client reads. */
export type PriceView = {
	readonly rows: readonly PriceRow[]
	readonly taxes: readonly PriceRow[]
	readonly notes: readonly string[]
	readonly total: string
	readonly due: string
}

const onePlace = ({ places }: Offer) => places.length < 2

/** Lines that read as one to a client share a label, and are added up under it. */
function labelOf(line: QuoteLine, offer: Offer): string {
	const at = onePlace(offer) ? '' : `, ${offer.places.find(({ id }) => id === line.place)?.name ?? ''}`
	switch (line.is) {
		case 'container':
		case 'extra':
			return line.name
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
			return 'Supplement for this palette'
		case 'minimum visit':
			return `Up to the least price of a visit${at}`
		default:
			return line satisfies never
	}
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
	const sums = new Map<string, Cents>()
	for (const line of lines.toSorted((a, b) => rank(a) - rank(b))) {
		const label = labelOf(line, offer)
		sums.set(label, cents((sums.get(label) ?? 0) + line.cents))
	}
	return [...sums].map(([label, amount]) => ({ label, amount: money(amount) }))
}

const percent = (milli: number) => `${milli / 1000} %`

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
		taxes: quote.tax.map((line) => ({
			label: `Sales tax, ${percent(line.milliPercent)} of ${money(line.baseCents)}`,
			amount: money(line.cents),
		})),
		notes: notesOf(quote),
		total: money(quote.totalCents),
		due: dueInWords(quote.due, money),
	}
}
