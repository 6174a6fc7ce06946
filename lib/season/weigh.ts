import { wordsIn } from '../pricing/cost/words'
import { price } from '../pricing/price'
import { everything } from '../pricing/quote/choice'
import { costing } from '../pricing/quote/costing'
import { quote } from '../pricing/quote/quote'
import type { Draft } from '../proposal/draft'
import type { Facts } from '../proposal/facts'
import { jobOf } from '../proposal/job-of'
import type { Cents } from '../units/cents'

/** Before tax, for sales tax is not the studio's; the margin in tenths of a per cent. */
export type Weighed = { readonly valueCents: Cents; readonly marginTenths: number | null }

/** Of a draft that holds nothing to be priced. */
export const unweighed = { valueCents: null, marginTenths: null }

/** A margin as the ledger keeps it. */
export const tenthsOf = (marginPercent: number | null): number | null =>
	marginPercent === null ? null : Math.round(marginPercent * 10)

/** What a draft comes to as it stands, by its palette of least price, with everything; null where nothing in it is priced. */
export function weigh(draft: Draft, facts: Facts): Weighed | null {
	const words = wordsIn(facts.studio.currency)
	const priced = draft.options.flatMap((option) => {
		const job = jobOf(draft, option, facts)
		if (job === null) return []
		const { list, costs } = price(job, words)
		return [{ list, costs, quote: quote(list, everything) }]
	})
	const [least] = priced.toSorted((a, b) => a.quote.totalCents - b.quote.totalCents)
	if (least === undefined) return null
	const { marginPercent } = costing(least.list, least.costs, everything)
	return {
		valueCents: least.quote.netCents,
		marginTenths: tenthsOf(marginPercent),
	}
}
