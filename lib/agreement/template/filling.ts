import { days, fullDay } from '../../format/day'
import { type MoneyFormat, moneyFormat } from '../../format/money'
import { list } from '../../format/words'
import { seasonName } from '../../season/season'
import type { VisitKind } from '../../visit/visit'
import type { AgreementFacts } from '../facts'
import { instalmentsOf } from '../instalment/instalments'
import { instalmentsInWords } from '../instalment/words'
import { type AgreedSeason, fixedCents } from '../season'
import type { Terms } from '../terms'
import type { Filling } from './fill'
import { underAgreement } from './under-agreement'

const orNull = (text: string): string | null => (text === '' ? null : text)
const on = (day: Parameters<typeof fullDay>[0] | null) => (day === null ? null : fullDay(day))

const plural: Record<VisitKind, string> = {
	install: 'installs',
	refresh: 'refreshes',
	watering: 'waterings',
	check: 'checks',
	'take-down': 'take-downs',
}
/** "1 install and 2 waterings" */
export const visitWords = ({ visits }: AgreedSeason) =>
	list(visits.map(({ kind, count }) => `${count} ${count === 1 ? kind : plural[kind]}`)) || 'no visit'

const priceWords = ({ price }: AgreedSeason, money: MoneyFormat) =>
	price.is === 'fixed' ? money(price.cents) : 'quoted each season'

const bySeason = (seasons: readonly AgreedSeason[], words: (season: AgreedSeason) => string) =>
	orNull(seasons.map((season) => `${seasonName(season)}, ${words(season)}`).join('; '))

function placeWords(terms: Terms, facts: AgreementFacts) {
	const { places, containers } = underAgreement(terms.seasons, facts)
	const nameOf = (place: string) => places.find(({ id }) => id === place)?.name ?? ''
	return {
		places: orNull(places.map(({ name, address }) => `${name}, ${address}`).join('; ')),
		containers: orNull(containers.map(({ name, words, place }) => `${name} (${words}) at ${nameOf(place)}`).join('; ')),
	}
}

function moneyWords({ seasons, plan }: Terms, { currency }: AgreementFacts) {
	const money = moneyFormat(currency)
	const total = fixedCents(seasons)
	const isOpen = total > 0 && plan === null
	return {
		prices: bySeason(seasons, (season) => priceWords(season, money)),
		total: money(total),
		instalments: isOpen ? null : instalmentsInWords(plan === null ? [] : instalmentsOf(seasons, plan), money),
	}
}

/** The words for each blank, from what was agreed and what is known. */
export function fillingOf(terms: Terms, facts: AgreementFacts): Filling {
	const { from, to, seasons, said } = terms
	return {
		studio: orNull(facts.studio.name),
		client: orNull(facts.client.name),
		start: on(from),
		end: on(to),
		...placeWords(terms, facts),
		visits: bySeason(seasons, visitWords),
		...moneyWords(terms, facts),
		waters: said.waters && { client: 'you', studio: 'us' }[said.waters],
		sold: orNull(said.sold),
		lent: orNull(said.lent),
		'lights down': on(said.lightsDownBy),
		notice: said.noticeDays === null ? null : days(said.noticeDays),
		law: orNull(said.law),
	}
}
