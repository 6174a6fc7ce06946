import { days, fullDay } from '../../format/day'
import type { MoneyFormat } from '../../format/money'
import { percent } from '../../format/words'
import type { TaxShare } from '../charge'
import type { Invoice } from '../invoice/invoice'

/** "Due 20 December 2026: 30 days after 20 November 2026" */
export function termsInWords({ terms: { from, netDays }, dueOn }: Pick<Invoice, 'terms' | 'dueOn'>): string {
	const due = `Due ${fullDay(dueOn)}`
	return netDays === 0 ? due : `${due}: ${days(netDays)} after ${fullDay(from)}`
}

/** "Sales tax, 6 % of $1,180.00" */
export const taxInWords = (
	{ milliPercent, baseCents }: Pick<TaxShare, 'milliPercent' | 'baseCents'>,
	money: MoneyFormat,
) => `Sales tax, ${percent(milliPercent / 1000)} of ${money(baseCents)}`

/** What stands below the lines beside the tax; none for who simply pays it. */
export const exemptInWords = ({ exemptCertificate }: Pick<Invoice, 'exemptCertificate'>): string | null =>
	exemptCertificate === null ? null : `No sales tax: exempt, certificate ${exemptCertificate}.`
