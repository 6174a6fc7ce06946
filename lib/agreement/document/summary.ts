import { fullDay } from '../../format/day'
import { moneyFormat } from '../../format/money'
import { capital, list, quantity } from '../../format/words'
import { seasonName } from '../../season/season'
import { dueInWords, planInWords } from '../instalment/words'
import type { ShownDocument } from './shown'

export type SummaryRow = { readonly label: string; readonly value: string }

type ShownSeason = ShownDocument['seasons'][number]

const visits = ({ visits: included }: ShownSeason) =>
	list(
		included.map(({ kind, count }) => (kind === 'refresh' && count > 1 ? `${count} refreshes` : quantity(count, kind))),
	) || 'no visit of its own'

const containers = ({ containers: named }: ShownSeason) => quantity(named.length, 'container')

/** What an agreement includes, at a glance: its days, and each season with its visits and, where it may be read, its price. */
export function summary({ from, to, seasons, money }: ShownDocument): SummaryRow[] {
	const format = money && moneyFormat(money.currency)
	const price = (index: number) => {
		const its = money?.prices[index]
		if (its === undefined || format === null) return []
		return [its.is === 'fixed' ? format(its.cents) : 'quoted each season']
	}
	return [
		{ label: 'Begins', value: fullDay(from) },
		{ label: 'Ends', value: fullDay(to) },
		...seasons.map((season, index) => ({
			label: capital(seasonName(season)),
			value: [...price(index), containers(season), visits(season)].join(' · '),
		})),
		...(money === null || format === null
			? []
			: [
					{ label: 'Fixed prices', value: `${format(money.totalCents)} together, before tax` },
					{ label: 'Paid', value: planInWords(money.plan) },
				]),
	]
}

/** Each instalment with when it falls due; none for one who may not read them. */
export function instalmentRows({ money }: ShownDocument): SummaryRow[] {
	if (money === null) return []
	const format = moneyFormat(money.currency)
	return money.instalments.map(({ due, cents }) => ({
		label: capital(dueInWords(due)),
		value: format(cents),
	}))
}
