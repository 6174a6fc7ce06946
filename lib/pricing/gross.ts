import type { Kind } from '@/lib/recipe/material'
import { type Cents, sum, zero } from '@/lib/units/cents'
import type { Bought } from './cost/bought'
import type { Words } from './cost/explain'
import { type Hands, labourCost, labourPrice } from './cost/labour'
import { type PricedLine, priceLine } from './cost/line'
import { minutesOf, type Work } from './cost/minutes'
import type { Job, JobLine } from './job'
import type { PartOf, Split } from './price-list'

/** A part before agreement, discount and rounding, both sides of it together. */
export type Gross = PartOf & {
	readonly name: string
	readonly place: Job['visits'][number]['place']
	readonly lines: readonly PricedLine[]
	readonly work: readonly Work[]
	readonly minutes: number
	readonly labourPriceCents: Cents
	readonly labourCostCents: Cents
	readonly otherCostCents: Cents
	readonly split: Split
	readonly cents: Cents
}

const isPlant = (kind: Kind) => kind === 'fresh' || kind === 'live'

function splitOf(lines: readonly JobLine[], priced: readonly PricedLine[], labour: Cents): Split {
	const of = (wanted: boolean) =>
		sum(
			priced.filter((_, index) => isPlant(lines[index]?.kind ?? 'mechanics') === wanted).map((line) => line.priceCents),
		)
	return { plants: of(true), goods: of(false), labour }
}

const total = ({ plants, goods, labour }: Split) => sum([plants, goods, labour])

type Named = PartOf & { readonly name: string; readonly place: Gross['place'] }

type Working = {
	readonly lines?: readonly JobLine[]
	readonly work: readonly Work[]
	readonly hands?: Hands
	/** Packs that are bought for several lines of the job together. */
	readonly bought?: ReadonlyMap<JobLine, Bought>
}

/** A part made of lines and labour. */
export function ofWork(
	part: Named,
	job: Pick<Job, 'rates'>,
	words: Words,
	{ lines = [], work, hands = 'crew', bought }: Working,
): Gross {
	const priced = lines.map((line) => priceLine(line, job.rates, words, bought?.get(line)))
	const minutes = minutesOf(work)
	const split = splitOf(lines, priced, labourPrice(minutes, job.rates))
	return {
		...part,
		lines: priced,
		work,
		minutes,
		labourPriceCents: split.labour,
		labourCostCents: labourCost(minutes, hands, job.rates),
		otherCostCents: zero,
		split,
		cents: total(split),
	}
}

/** A part that has a price of its own, whatever the minutes. */
export function ofPrice(part: Named, as: 'goods' | 'labour', price: Cents, cost: Cents): Gross {
	const split = { plants: zero, goods: zero, labour: zero, [as]: price }
	return {
		...part,
		lines: [],
		work: [],
		minutes: 0,
		labourPriceCents: zero,
		labourCostCents: zero,
		otherCostCents: cost,
		split,
		cents: price,
	}
}
