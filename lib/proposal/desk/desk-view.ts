import type { MoneyFormat } from '../../format/money'
import { list, percent } from '../../format/words'
import type { CostedPart } from '../../pricing/cost-book'
import type { Costing } from '../../pricing/quote/costing'
import type { Quote } from '../../pricing/quote/quote'
import type { Rates } from '../../pricing/rates'
import { type Cents, cents } from '../../units/cents'
import type { Offer } from '../offer/offer'
import { priceView } from '../offer/price-view'
import type { DeskLine, DeskOption, DeskPart } from './desk'

const names: Record<CostedPart['is'], (name: string) => string> = {
	container: (name) => name,
	extra: (name) => `Extra: ${name}`,
	travel: (name) => `Way and set-up, ${name}`,
	disposal: (name) => `The dump, ${name}`,
	soil: (name) => `Soil, ${name}`,
	'take-down': (name) => `Taking down, ${name}`,
	design: () => 'Design',
	season: () => 'Season',
	supplement: () => 'Supplement',
}

function deskPart(part: CostedPart, stepCents: Cents, money: MoneyFormat): DeskPart {
	const lines: DeskLine[] = part.lines.map(({ name, price, cost, priceCents, costCents }) => ({
		what: name,
		how: cost === null ? price : `${price}; ${cost}`,
		price: money(priceCents),
		cost: money(costCents),
	}))
	const { minutes, labourPriceCents, labourCostCents, otherCostCents } = part
	const work = part.work.map(({ what, how }) => `${what} ${how}`).join(', ')
	const labour =
		minutes === 0
			? []
			: [
					{
						what: `${Math.round(minutes)} person-minutes`,
						how: work,
						price: money(labourPriceCents),
						cost: money(labourCostCents),
					},
				]
	const other =
		otherCostCents === 0 ? [] : [{ what: 'bought or paid', how: '', price: '', cost: money(otherCostCents) }]
	const less =
		part.discountCents === 0
			? []
			: [{ what: 'discount of the agreement', how: '', price: `−${money(part.discountCents)}`, cost: '' }]
	const up =
		part.roundingCents === 0
			? []
			: [{ what: `rounded up to the next ${money(stepCents)}`, how: '', price: money(part.roundingCents), cost: '' }]
	const price = cents(part.grossCents - part.discountCents + part.roundingCents)
	return {
		name: names[part.is](part.name),
		price: money(price),
		cost: money(part.costCents),
		lines: [...lines, ...labour, ...other, ...less, ...up],
	}
}

const share = (part: Cents, whole: Cents) => `${Math.round((part / whole) * 100)} %`

/** Why too little is left, and what would mend it. */
function mend(
	{ costCents, labourCents, parts, shortfallCents, marginPercent }: Costing,
	floorPercent: number,
	money: MoneyFormat,
): string[] {
	if (shortfallCents === 0 || marginPercent === null) return []
	const lines = parts.flatMap((part) => part.lines).toSorted((a, b) => b.costCents - a.costCents)
	const whole = lines.filter(({ cost }) => cost?.startsWith('nobody else') ?? false).map(({ name }) => name)
	return [
		`${percent(marginPercent)} is below your floor of ${floorPercent} %: ${share(labourCents, costCents)} of the cost is labour${lines[0] === undefined ? '' : `, the dearest line is ${lines[0].name}`}.`,
		`${money(shortfallCents)} more on the price would mend it, or ${money(cents(Math.ceil((shortfallCents * (100 - floorPercent)) / 100)))} less cost.`,
		...(whole.length > 0
			? [
					`Whole packs are bought for ${list([...new Set(whole)])} alone: use it at another client, or something that others use.`,
				]
			: []),
	]
}

export type Priced = { readonly key: string; readonly quote: Quote; readonly costing: Costing }

export type DeskPrice = Omit<DeskOption, 'words' | 'seen' | 'pots' | 'pictures'>

/** One option's quote and costing in finished words and figures. */
export function deskOption(
	{ key, quote, costing }: Priced,
	offer: Offer,
	{
		marginFloorPercent: floorPercent,
		presentationStepCents,
	}: Pick<Rates, 'marginFloorPercent' | 'presentationStepCents'>,
	money: MoneyFormat,
): DeskPrice {
	const { rows, taxes, total, due } = priceView(offer, quote, money)
	return {
		key,
		quote: { rows: [...rows, ...taxes], total, due },
		cost: money(costing.costCents),
		margin: costing.marginPercent === null ? 'none' : percent(costing.marginPercent),
		hours: `${(costing.minutes / 60).toFixed(1)} h`,
		mend: mend(costing, floorPercent, money),
		parts: costing.parts.map((part) => deskPart(part, cents(presentationStepCents), money)),
	}
}

export const deskExtra = (part: CostedPart, money: MoneyFormat) => ({
	name: part.name,
	price: money(cents(part.grossCents - part.discountCents + part.roundingCents)),
	cost: money(part.costCents),
})
