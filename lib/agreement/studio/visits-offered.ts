import { seasonName } from '../../season/season'
import type { AgreedSeason } from '../season'
import { visitText } from './form/terms-text'

/** The visits that an instalment may wait for: the install of each season, and whatever else it includes. */
export const visitsOffered = (seasons: readonly AgreedSeason[]): { readonly value: string; readonly label: string }[] =>
	seasons.flatMap(({ quarter, year, visits }) => {
		const season = { quarter, year }
		const included = visits.length === 0 ? [{ kind: 'install' as const, count: 1 }] : visits
		return included.flatMap(({ kind, count }) =>
			Array.from({ length: count }, (_, index) => ({
				value: visitText({ is: 'at visit', season, visit: kind, number: index + 1 }),
				label: `${seasonName(season)}: ${kind}${count === 1 ? '' : ` ${index + 1}`}`,
			})),
		)
	})
