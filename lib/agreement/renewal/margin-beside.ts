import { marginPercent } from '../../pricing/quote/costing'
import { type Cents, cents } from '../../units/cents'

/** What was approved for a season: its value before tax, and its margin before overhead in tenths of a per cent. */
export type Brought = { readonly valueCents: Cents; readonly marginTenths: number | null }

/** In per cent to one decimal; null without a value. */
export type MarginBeside = { readonly was: number; readonly is: number | null }

/**
 * The margin of what was approved, and what it would have been had the agreed price been higher by `difference` and all
 * else the same. Null where nothing was approved, or its margin is not known.
 */
export function marginBeside(brought: Brought | undefined, difference: Cents): MarginBeside | null {
	if (brought === undefined || brought.marginTenths === null) return null
	const { valueCents, marginTenths } = brought
	const costCents = cents(Math.round((valueCents * (1000 - marginTenths)) / 1000))
	return { was: marginTenths / 10, is: marginPercent(cents(valueCents + difference), costCents) }
}
