import { type Cents, cents, sum, zero } from '@/lib/units/cents'
import type { Part, PriceList } from '../price-list'
import { type Choice, chosen } from './choice'
import { type Due, dueOf } from './due'
import { type TaxLine, taxLines } from './tax'

/** A part of the price list that was chosen, or the line that lifts a visit to the minimum. */
export type QuoteLine =
	| Part
	| (Omit<Part, 'is' | 'container' | 'extra'> & {
			readonly is: 'minimum visit'
	  })

/** What a client is asked to pay for a choice: the only price that may reach a client. */
export type Quote = {
	readonly is: 'quote'
	readonly currency: string
	readonly ratesVersion: number
	readonly lines: readonly QuoteLine[]
	readonly discountPercent: number
	readonly netCents: Cents
	readonly tax: readonly TaxLine[]
	readonly exemptCertificate: string | null
	readonly totalCents: Cents
	readonly due: readonly Due[]
}

/** What each visit lacks of the minimum, as a line that says so. */
function topUps(parts: readonly Part[], { minimumVisitCents: minimum }: PriceList): QuoteLine[] {
	if (minimum === null) return []
	return parts
		.filter(({ is }) => is === 'travel')
		.flatMap(({ place, name }) => {
			const lacking = cents(minimum - sum(parts.filter((part) => part.place === place).map((part) => part.cents)))
			if (lacking <= 0) return []
			const split = { plants: zero, goods: zero, labour: lacking }
			return [
				{
					is: 'minimum visit' as const,
					name,
					place,
					cents: lacking,
					split,
					bill: 'apart' as const,
				},
			]
		})
}

function billed(bill: Part['bill'], lines: readonly QuoteLine[], tax: readonly TaxLine[]): Cents {
	return sum([...lines, ...tax].filter((each) => each.bill === bill).map((each) => each.cents))
}

/**
 * The total of a choice, from the frozen price list alone. Adding to a choice never lowers the price before tax.
 * @throws when the choice names a container or an extra that the list does not hold
 */
export function quote(list: PriceList, choice: Choice): Quote {
	const parts = chosen(list.parts, choice)
	for (const key of [...choice.leftOut, ...choice.extras])
		if (
			!list.parts.some(
				(part) => ('container' in part && part.container === key) || ('extra' in part && part.extra === key),
			)
		)
			throw new Error(`quote: "${key}" is not in the price list`)
	const lines = [...parts, ...topUps(parts, list)]
	const tax = taxLines(lines, list)
	const netCents = sum(lines.map((line) => line.cents))
	const totalCents = sum([netCents, ...tax.map((line) => line.cents)])
	return {
		is: 'quote',
		currency: list.currency,
		ratesVersion: list.ratesVersion,
		lines,
		discountPercent: list.discountPercent,
		netCents,
		tax,
		exemptCertificate: list.payer.exemptCertificate,
		totalCents,
		due: dueOf(totalCents, billed('agreement', lines, tax), list),
	}
}
