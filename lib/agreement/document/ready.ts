import { mostCents } from '../../proposal/draft'
import type { Problem } from '../../proposal/problem'
import { seasonName } from '../../season/season'
import type { AgreementFacts } from '../facts'
import { type AgreedSeason, fixedCents } from '../season'
import { faults } from '../template/faults'
import { fill } from '../template/fill'
import { fillingOf } from '../template/filling'
import type { Template } from '../template/template'
import type { Terms } from '../terms'

const when = (is: boolean, at: string, says: string): Problem[] => (is ? [{ at, says }] : [])

/** A season is known by its quarter and year: a path into the terms that outlives a change of order. */
const pathOf = ({ quarter, year }: AgreedSeason) => `seasons.${quarter} ${year}`

function seasonProblems(season: AgreedSeason, { plan }: Terms, { containers }: AgreementFacts): Problem[] {
	const at = pathOf(season)
	const name = seasonName(season)
	const { price } = season
	const isFixed = price.is === 'fixed'
	const amount = isFixed ? price.cents : null
	const isKnown = (container: string) => containers.some(({ id }) => id === container)
	return [
		...when(amount !== null && amount <= 0, `${at}.price`, `The price of ${name} is not above zero.`),
		...when(amount !== null && amount > mostCents, `${at}.price`, `The price of ${name} is above what can be kept.`),
		...when(season.containers.length === 0, `${at}.containers`, `Name the containers of ${name}.`),
		...when(
			!season.containers.every(isKnown),
			`${at}.containers`,
			`${name} names a container that this client no longer has.`,
		),
		...when(
			isFixed && plan?.is === 'per visit' && season.visits.length === 0,
			`${at}.visits`,
			`${name} is paid with its visits and has none: include one at least.`,
		),
	]
}

function planProblems({ plan, seasons }: Terms): Problem[] {
	const hasPrice = fixedCents(seasons) > 0
	const days = plan?.is === 'own dates' ? plan.parts.flatMap(({ due }) => (due.is === 'on' ? [due.day] : [])) : []
	return [
		...when(hasPrice && plan === null, 'plan', 'Say how the fixed prices are paid.'),
		...when(!hasPrice && plan !== null, 'plan', 'No season has a fixed price, so nothing is paid in instalments.'),
		...when(
			days.some((each, index) => each < (days[index - 1] ?? each)),
			'plan',
			'An instalment is due before the one above it: put them in the order of their days.',
		),
	]
}

function isNamedTwice(season: AgreedSeason, { seasons }: Terms): boolean {
	return seasons.filter((each) => pathOf(each) === pathOf(season))[0] !== season
}

const openProblems = (terms: Terms, facts: AgreementFacts, template: Template): Problem[] =>
	fill(template, fillingOf(terms, facts), terms.without).open.map(({ clause, title, blank }) => ({
		at: `clauses.${clause}.${blank}`,
		says: `“${title}” leaves {${blank}} open.`,
	}))

/** What stops an agreement from being issued: what was agreed first, then the template, then each blank left open. */
export function problems(terms: Terms, facts: AgreementFacts, template: Template): Problem[] {
	const { from, to, seasons } = terms
	return [
		...when(from === null, 'from', 'Say on which day it begins.'),
		...when(to === null, 'to', 'Say on which day it ends.'),
		...when(from !== null && to !== null && to < from, 'to', 'It ends before it begins.'),
		...when(seasons.length === 0, 'seasons', 'Name one season at least.'),
		...seasons.flatMap((season) => [
			...when(isNamedTwice(season, terms), pathOf(season), `${seasonName(season)} is named twice.`),
			...seasonProblems(season, terms, facts),
		]),
		...planProblems(terms),
		...faults(template),
		...openProblems(terms, facts, template),
	]
}
