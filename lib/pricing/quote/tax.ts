import { type Cents, cents, sum, zero } from '@/lib/units/cents'
import { divideHalfUp } from '@/lib/units/decimal'
import type { PlaceId } from '@/lib/units/id'
import type { Part, PriceList } from '../price-list'

export type TaxLine = {
	readonly milliPercent: number
	readonly baseCents: Cents
	readonly cents: Cents
	readonly bill: Part['bill']
}
export type Taxed = Pick<Part, 'place' | 'split' | 'bill'>

/**
 * Carried to the third decimal, up when that is above four: the rounding of section 324 of the Streamlined Sales
 * and Use Tax Agreement. Digits past the third never change it, so it is the exact amount, half up.
 */
export function taxOn(base: Cents, milliPercent: number): Cents {
	return cents(Number(divideHalfUp(BigInt(base) * BigInt(milliPercent), 100_000n)))
}

function taxable({ plants, goods, labour }: Taxed['split'], { taxable: is, labour: how }: PriceList['tax']): Cents {
	const material = sum([is.plants ? plants : zero, is.goods ? goods : zero])
	const isLabourTaxed = is.labour || (how === 'taxed whole' && (is.plants || is.goods))
	return isLabourTaxed ? sum([material, labour]) : material
}

const rateAt = (place: PlaceId, { places }: PriceList['tax']): number => {
	const found = places.find((each) => each.place === place)
	if (found === undefined) throw new Error(`tax: no rate is known for the place ${place}`)
	return found.milliPercent
}

/** Tax per rate and bill, on the invoice or by the line as the studio has it; none for who is exempt. */
export function taxLines(lines: readonly Taxed[], { tax, payer }: Pick<PriceList, 'tax' | 'payer'>): TaxLine[] {
	if (payer.exemptCertificate !== null) return []
	const groups = new Map<string, { milliPercent: number; bill: Part['bill']; bases: Cents[] }>()
	for (const line of lines) {
		const milliPercent = rateAt(line.place, tax)
		const key = `${line.bill} ${milliPercent}`
		const group = groups.get(key) ?? {
			milliPercent,
			bill: line.bill,
			bases: [],
		}
		group.bases.push(taxable(line.split, tax))
		groups.set(key, group)
	}
	return [...groups.values()]
		.map(({ milliPercent, bill, bases }) => {
			const baseCents = sum(bases)
			const byLine = () => sum(bases.map((base) => taxOn(base, milliPercent)))
			return {
				milliPercent,
				bill,
				baseCents,
				cents: tax.basis === 'line' ? byLine() : taxOn(baseCents, milliPercent),
			}
		})
		.filter(({ baseCents, milliPercent }) => baseCents > 0 && milliPercent > 0)
		.toSorted((a, b) => a.bill.localeCompare(b.bill) || a.milliPercent - b.milliPercent)
}
