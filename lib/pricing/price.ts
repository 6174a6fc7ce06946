import { cents, sum } from '@/lib/units/cents'
import type { ContainerId } from '@/lib/units/id'
import type { Words } from './cost/explain'
import type { CostBook, CostedPart } from './cost-book'
import { grossParts } from './gross-parts'
import type { Job } from './job'
import type { Part, PartOf, PriceList } from './price-list'
import { seasonParts } from './season'
import { type Settled, settle, splitLike } from './settle'

/** What a part stands for, and nothing else of it. */
function partOf(part: PartOf): PartOf {
	switch (part.is) {
		case 'container':
		case 'disposal':
		case 'soil':
		case 'take-down':
			return { is: part.is, container: part.container }
		case 'extra':
			return { is: part.is, extra: part.extra }
		case 'travel':
		case 'design':
		case 'season':
		case 'supplement':
			return { is: part.is }
		default:
			return part satisfies never
	}
}

/** Asked for apart: an agreement has instalments for the seasons that it prices, and they are not listed one by one. */
function listed({ gross, cents: amount }: Settled): Part {
	const { name, place } = gross
	return {
		...partOf(gross),
		name,
		place,
		cents: amount,
		split: splitLike(amount, gross.split),
		bill: 'apart',
	}
}

function costed({ gross, discountCents, roundingCents }: Settled): CostedPart {
	const { name, place, lines, work, minutes, labourPriceCents, labourCostCents, otherCostCents } = gross
	const costCents = sum([...lines.map((line) => line.costCents), labourCostCents, otherCostCents])
	const sides = {
		labourPriceCents,
		labourCostCents,
		otherCostCents,
		costCents,
		grossCents: gross.cents,
	}
	return {
		...partOf(gross),
		name,
		place,
		lines,
		work,
		minutes,
		...sides,
		discountCents,
		roundingCents,
	}
}

/** @returns true when the agreement's fixed price pays for the part */
function isCovered({ agreement, containers }: Job): (part: PartOf & { place: string }) => boolean {
	if (agreement.is !== 'fixed') return () => false
	const named = new Set(agreement.containers)
	const places = new Set<string>(containers.filter(({ id }) => named.has(id)).map(({ place }) => place))
	return (part) => {
		if ('container' in part) return named.has(part.container)
		return part.is === 'design' || (part.is === 'travel' && places.has(part.place))
	}
}

const byText =
	<T>(key: (item: T) => string) =>
	(a: T, b: T) =>
		key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0

/** In the order of ids, so that a tie between remainders falls the same way however the job was written down. */
function inOrder(job: Job): Job {
	return {
		...job,
		visits: job.visits.toSorted(byText(({ place }) => place)),
		containers: job.containers.toSorted(byText(({ id }) => id)),
		extras: job.extras.toSorted(byText(({ key }) => key)),
	}
}

/**
 * The price of one option: `list` is the client's side of the computation and `costs` the studio's.
 * Amounts in cents. The order of lines, containers and extras changes no sum. Whole packs are bought for what stays:
 * `leftOut` changes costs, never a price.
 * @throws when a job is not well-formed (see `grossParts`, `priceLine`)
 */
export function price(
	asWritten: Job,
	words: Words,
	leftOut: readonly ContainerId[] = [],
): { list: PriceList; costs: CostBook } {
	const job = inOrder(asWritten)
	const settled = settle(grossParts(job, words, leftOut), job)
	const covers = isCovered(job)
	const open = settled.filter(({ gross }) => !covers(gross))
	const covered = settled.filter(({ gross }) => covers(gross))
	const { rates, visits } = job
	const list: PriceList = {
		is: 'price list',
		currency: job.currency,
		ratesVersion: job.ratesVersion,
		parts: [...open.map(listed), ...seasonParts(job, covered)],
		discountPercent: job.agreement.is === 'discount' ? job.agreement.percent : 0,
		minimumVisitCents: job.agreement.is === 'none' ? cents(rates.minimumVisitCents) : null,
		tax: {
			...rates.tax,
			places: visits.map(({ place, taxMilliPercent }) => ({
				place,
				milliPercent: taxMilliPercent,
			})),
		},
		payer: job.payer,
		depositPercent: rates.depositPercent,
		isUnderAgreement: job.agreement.is !== 'none',
	}
	return {
		list,
		costs: {
			is: 'cost book',
			marginFloorPercent: rates.marginFloorPercent,
			leftOut,
			parts: settled.map(costed),
		},
	}
}
