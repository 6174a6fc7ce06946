import { addDays, type Day } from '../../units/day'
import { addMonths } from '../instalment/months'
import type { Due, Plan, Start } from '../instalment/plan'
import type { Terms } from '../terms'

const year = 12
const later = (from: Day) => addMonths(from, year)

/** The day before the next year begins: what ended with February ends with February again, on the 28th or 29th. */
const lastDay = (to: Day) => addDays(later(addDays(to, 1)), -1)

function startLater(start: Start): Start {
	switch (start.is) {
		case 'on':
			return { is: 'on', day: later(start.day) }
		case 'first of the month':
			return { is: start.is, from: later(start.from) }
		case 'on approval':
			return start
		default:
			return start satisfies never
	}
}

function dueLater(due: Due): Due {
	switch (due.is) {
		case 'on':
			return { is: 'on', day: later(due.day) }
		case 'on approval':
			return due
		case 'at visit':
			return { ...due, season: { ...due.season, year: due.season.year + 1 } }
		default:
			return due satisfies never
	}
}

function planLater(plan: Plan): Plan {
	switch (plan.is) {
		case 'per visit':
			return plan
		case 'every months':
			return { ...plan, start: startLater(plan.start) }
		case 'own dates':
			return { ...plan, parts: plan.parts.map(({ weight, due }) => ({ weight, due: dueLater(due) })) }
		default:
			return plan satisfies never
	}
}

/** The same terms for the year after, day for day and season for season, at the same prices. */
export function aYearOn(terms: Terms): Terms {
	const { from, to, seasons, plan, said } = terms
	return {
		...terms,
		from: from && later(from),
		to: to && lastDay(to),
		seasons: seasons.map((season) => ({ ...season, year: season.year + 1 })),
		plan: plan && planLater(plan),
		said: { ...said, lightsDownBy: said.lightsDownBy && later(said.lightsDownBy) },
	}
}
