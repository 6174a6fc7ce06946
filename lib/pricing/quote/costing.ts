import { type Cents, cents, sum, zero } from '@/lib/units/cents'
import { divideHalfUp, divideUp, thousandths } from '@/lib/units/decimal'
import type { CostBook, CostedPart } from '../cost-book'
import type { PriceList } from '../price-list'
import { type Choice, chosen } from './choice'
import { quote } from './quote'

/** What a choice costs the studio and leaves it. `marginPercent` is before overhead, of the price before tax; null without a price. */
export type Costing = {
	readonly is: 'costing'
	readonly parts: readonly CostedPart[]
	readonly minutes: number
	readonly materialCents: Cents
	readonly labourCents: Cents
	readonly costCents: Cents
	readonly netCents: Cents
	readonly marginPercent: number | null
	/** What the price before tax lacks of the floor; nothing when the floor is reached. */
	readonly shortfallCents: Cents
}

/** (price − cost) ÷ price, in per cent to one decimal. */
export function marginPercent(net: Cents, cost: Cents): number | null {
	return net === 0 ? null : Number(divideHalfUp(BigInt(net - cost) * 1000n, BigInt(net))) / 10
}

/** The least price at which `cost` leaves the margin `percent`, less `net`; never below zero. */
function shortfall(net: Cents, cost: Cents, percent: number): Cents {
	if (percent >= 100) return zero
	const needed = Number(divideUp(BigInt(cost) * 100_000n, 100_000n - thousandths(percent)))
	return cents(Math.max(0, needed - net))
}

const same = (a: readonly string[], b: readonly string[]) => a.toSorted().join() === b.toSorted().join()

/** @throws when the book was made with other containers left out: what is bought depends on them */
export function costing(list: PriceList, book: CostBook, choice: Choice): Costing {
	if (!same(book.leftOut, choice.leftOut)) throw new Error('costing: the cost book was made for another choice')
	const parts = chosen(book.parts, choice)
	const labourCents = sum(parts.map((part) => part.labourCostCents))
	const costCents = sum(parts.map((part) => part.costCents))
	const { netCents } = quote(list, choice)
	return {
		is: 'costing',
		parts,
		minutes: Math.round(parts.reduce((total, { minutes }) => total + minutes, 0) * 1000) / 1000,
		materialCents: cents(costCents - labourCents),
		labourCents,
		costCents,
		netCents,
		marginPercent: marginPercent(netCents, costCents),
		shortfallCents: shortfall(netCents, costCents, book.marginFloorPercent),
	}
}
