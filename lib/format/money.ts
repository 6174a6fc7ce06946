import { dinero, toDecimal } from 'dinero.js'
import { AUD, CAD, CHF, DKK, EUR, GBP, NOK, NZD, SEK, USD } from 'dinero.js/currencies'
import type { Cents } from '../units/cents'

/** Currencies of two decimals that a studio may keep its books in (ISO 4217). */
const currencies = { USD, CAD, EUR, GBP, AUD, NZD, CHF, SEK, DKK, NOK }
export type CurrencyCode = keyof typeof currencies

export const isCurrency = (code: string): code is CurrencyCode => Object.hasOwn(currencies, code)
export const currencyCodes = Object.keys(currencies).filter(isCurrency)

const made = new Map<string, Intl.NumberFormat>()

/** Making one costs more than the rest of a page's words together, so each is made once. */
function numbers(currency: CurrencyCode, cents: boolean): Intl.NumberFormat {
	const key = `${currency} ${cents}`
	const known = made.get(key)
	if (known !== undefined) return known
	const digits = cents ? {} : { maximumFractionDigits: 0 }
	const format = new Intl.NumberFormat('en-US', {
		style: 'currency',
		currency,
		currencyDisplay: 'narrowSymbol',
		...digits,
	})
	made.set(key, format)
	return format
}

/** "$1,180.00": the amount to the cent, in the studio's currency; "$1,180" where a ledger asks for whole ones. */
export type MoneyFormat = (amount: Cents) => string

/** @throws when `code` is not one of `currencyCodes` */
export function moneyFormat(code: string, { cents = true } = {}): MoneyFormat {
	if (!isCurrency(code)) throw new Error(`moneyFormat: ${code} is not a currency of the studio`)
	const format = numbers(code, cents)
	return (amount) =>
		toDecimal(dinero({ amount, currency: currencies[code] }), ({ value }) =>
			format.format(Number(value)).replace('-', '−'),
		)
}
