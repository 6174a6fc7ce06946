import type { PriceList } from '../../pricing/price-list'
import { dueOf } from '../../pricing/quote/due'
import type { Quote, QuoteLine } from '../../pricing/quote/quote'
import type { TaxLine } from '../../pricing/quote/tax'
import { type Cents, sum, zero } from '../../units/cents'

export type Asked = Pick<Quote, 'lines' | 'tax' | 'due'>

/** A rate stands once on an invoice, whoever was to ask for what it is on. */
function byRate(tax: readonly TaxLine[]): TaxLine[] {
	const rates = [...new Set(tax.map(({ milliPercent }) => milliPercent))]
	return rates.map((milliPercent) => {
		const of = tax.filter((each) => each.milliPercent === milliPercent)
		const baseCents = sum(of.map((each) => each.baseCents))
		return { milliPercent, baseCents, cents: sum(of.map((each) => each.cents)), bill: 'apart' }
	})
}

const whole = (lines: readonly QuoteLine[], tax: readonly TaxLine[]): Cents =>
	sum([...lines, ...tax].map(({ cents }) => cents))

/**
 * What a quote asks for where it says that the agreement does, as quotes of a discounted season once did. An agreement
 * has instalments for the seasons that it prices fixed, each one line of the quote, and for no other: a season that is
 * quoted under it is asked for by its own proposal, by the terms of its payer and without a deposit.
 */
export function askedOf({ lines, tax, due }: Asked, list: PriceList): Asked {
	if (lines.every(({ bill }) => bill === 'apart') || lines.some(({ is }) => is === 'season')) return { lines, tax, due }
	const own = lines.map((line) => ({ ...line, bill: 'apart' as const }))
	const taxes = byRate(tax)
	return { lines: own, tax: taxes, due: dueOf(whole(own, taxes), zero, list) }
}
