import type { Cents } from '@/lib/units/cents'
import type { ContainerId } from '@/lib/units/id'
import type { PricedLine } from './cost/line'
import type { Work } from './cost/minutes'
import type { PartOf } from './price-list'

/** What one part costs the studio and how its price came about. Pairs with the part of the price list of the same key. */
export type CostedPart = PartOf & {
	readonly name: string
	readonly place: string
	readonly lines: readonly PricedLine[]
	readonly work: readonly Work[]
	readonly minutes: number
	readonly labourPriceCents: Cents
	readonly labourCostCents: Cents
	/** Bought or paid beside lines and labour: soil, the dump. */
	readonly otherCostCents: Cents
	readonly costCents: Cents
	/** Lines and labour before discount and rounding. */
	readonly grossCents: Cents
	readonly discountCents: Cents
	readonly roundingCents: Cents
}

/** The studio's side of the computation: never in anything that a client receives. */
export type CostBook = {
	readonly is: 'cost book'
	readonly marginFloorPercent: number
	/** Containers for which nothing is bought: the book costs no choice but those that leave out the same. */
	readonly leftOut: readonly ContainerId[]
	readonly parts: readonly CostedPart[]
}
