import type { QuoteLine } from '../../pricing/quote/quote'
import { type Cents, cents } from '../../units/cents'
import type { Offer } from '../offer/offer'
import { placeName } from './place-name'

type Offered = Pick<Offer, 'containers' | 'extras' | 'places'>

/** Tax not in it; `key` tells rows apart that read alike. */
export type SummedRow = { readonly key: string; readonly label: string; readonly cents: Cents }

const isTwin = (name: string, { containers, extras }: Offered) =>
	[...containers, ...extras].filter((each) => each.name === name).length > 1

/** What a client reads. Containers and extras of the same name are told apart by place and kind. */
function labelOf(line: QuoteLine, offer: Offered): string {
	const at = offer.places.length < 2 ? '' : `, ${placeName(line.place, offer)}`
	switch (line.is) {
		case 'container':
			return isTwin(line.name, offer) ? `${line.name}${at}` : line.name
		case 'extra':
			return isTwin(line.name, offer) ? `Extra “${line.name}”${at}` : line.name
		case 'travel':
		case 'disposal':
			return `Taking out, delivery and set-up${at}`
		case 'take-down':
			return `Taking down at the end${at}`
		case 'soil':
			return `Soil${at}`
		case 'design':
			return 'Design'
		case 'season':
			return `The season, by your agreement${at}`
		case 'supplement':
			return 'Supplement for the palette'
		case 'minimum visit':
			return `Up to the least price of a visit${at}`
		default:
			return line satisfies never
	}
}

/** Lines of one key are one to a client, and are added up: what comes with a visit, never two things that are put in. */
function keyOf(line: QuoteLine): string {
	if (line.is === 'container') return `container ${line.container}`
	if (line.is === 'extra') return `extra ${line.extra}`
	const isOfAll = line.is === 'design' || line.is === 'supplement'
	return `${line.is === 'disposal' ? 'travel' : line.is} ${isOfAll ? 'everywhere' : line.place}`
}

const order: Record<QuoteLine['is'], number> = {
	season: 0,
	supplement: 1,
	container: 2,
	extra: 3,
	design: 4,
	soil: 5,
	travel: 6,
	disposal: 6,
	'take-down': 7,
	'minimum visit': 8,
}

/** The lines of a quote as a client reads them: containers in the offer's order, then what comes with the visit. */
export function summedRows(lines: readonly QuoteLine[], offer: Offered): SummedRow[] {
	const place = new Map<string, number>(offer.containers.map(({ id }, index) => [id, index]))
	const rank = (line: QuoteLine) => order[line.is] * 1000 + ('container' in line ? (place.get(line.container) ?? 0) : 0)
	const sums = new Map<string, { label: string; amount: Cents }>()
	for (const line of lines.toSorted((a, b) => rank(a) - rank(b))) {
		const key = keyOf(line)
		const amount = cents((sums.get(key)?.amount ?? 0) + line.cents)
		sums.set(key, { label: labelOf(line, offer), amount })
	}
	return [...sums].map(([key, { label, amount }]) => ({ key, label, cents: amount }))
}
