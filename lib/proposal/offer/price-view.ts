import { type MoneyFormat, moneyFormat } from '../../format/money'
import type { Quote } from '../../pricing/quote/quote'
import { summedRows } from '../picked/summed-rows'
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

/** Amounts in the currency in which an offer was published. */
export const offerMoney = ({ options }: Pick<Offer, 'options'>): MoneyFormat =>
	moneyFormat(options[0]?.prices.currency ?? 'USD')

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
		rows: summedRows(quote.lines, offer).map(({ key, label, cents }) => ({ key, label, amount: money(cents) })),
		taxes: taxesOf(quote, money),
		notes: notesOf(quote),
		total: money(quote.totalCents),
		due: dueInWords(quote.due, money),
	}
}
