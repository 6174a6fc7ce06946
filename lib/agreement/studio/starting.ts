import { quarters } from '../../season/season'
import { addDays, type Day } from '../../units/day'
import type { ContainerId } from '../../units/id'
import { addMonths, firstOfMonth } from '../instalment/months'
import type { AgreedSeason } from '../season'
import { emptyTerms, type Terms } from '../terms'

/** March to May is spring, and so on: meteorological seasons, common practice. Winter is named by the year in which it begins. */
function seasonOf(day: Day): Pick<AgreedSeason, 'quarter' | 'year'> {
	const [year = 0, month = 1] = day.split('-').map(Number)
	const quarter = quarters[Math.floor(((month + 9) % 12) / 3)] ?? 'winter'
	return { quarter, year: month < 3 ? year - 1 : year }
}

/** What a new agreement begins with: a year from the first of a month, every season quoted, with every container. */
export function startingTerms(today: Day, containers: readonly ContainerId[]): Terms {
	const from = firstOfMonth(addDays(today, 1))
	return {
		...emptyTerms,
		from,
		to: addDays(addMonths(from, 12), -1),
		seasons: [0, 3, 6, 9].map((months) => ({
			...seasonOf(addMonths(from, months)),
			price: { is: 'quoted' as const },
			containers: [...containers],
			visits: [{ kind: 'install' as const, count: 1 }],
		})),
	}
}
