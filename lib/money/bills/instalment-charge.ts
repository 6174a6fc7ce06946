import { allocate } from '../../pricing/allocate'
import { taxOn } from '../../pricing/quote/tax'
import type { Rates } from '../../pricing/rates'
import { type Cents, sum, zero } from '../../units/cents'
import type { Charge } from '../charge'

/** What the tax on an agreement follows from: at each place the rate, and how many containers the agreement names there. */
export type AgreedTax = {
	readonly isTaxed: boolean
	readonly places: readonly { readonly containers: number; readonly milliPercent: number }[]
}

/** A fixed price is one for all that it covers, so it is taxed whole where the studio's rates tax any of its classes. */
export const isAgreedTaxed = ({ tax: { taxable } }: Pick<Rates, 'tax'>): boolean => Object.values(taxable).some(Boolean)

/**
 * An instalment with its tax: an invoice of its own, so that its tax is that of its rates on its amount. The amount is
 * split over the places by their number of named containers, by largest remainder.
 */
export function instalmentCharge(netCents: Cents, { isTaxed, places }: AgreedTax): Charge {
	if (!isTaxed || places.length === 0) return { netCents, tax: [] }
	const bases = allocate(
		netCents,
		places.map(({ containers }) => containers),
	)
	const rates = [...new Set(places.map(({ milliPercent }) => milliPercent))].filter((rate) => rate > 0)
	const tax = rates
		.toSorted((a, b) => a - b)
		.map((milliPercent) => {
			const baseCents = sum(
				places.map((place, index) => (place.milliPercent === milliPercent ? (bases[index] ?? zero) : zero)),
			)
			return { milliPercent, baseCents, cents: taxOn(baseCents, milliPercent) }
		})
	return { netCents, tax: tax.filter(({ baseCents }) => baseCents > 0) }
}
