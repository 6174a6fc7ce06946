import type { AgreementFacts } from '../facts'
import type { AgreedSeason } from '../season'

/** The containers that a season names, and the places where those stand; in the order of the record. */
export function underAgreement(seasons: readonly AgreedSeason[], { places, containers }: AgreementFacts) {
	const named = new Set(seasons.flatMap((season) => season.containers))
	const kept = containers.filter(({ id }) => named.has(id))
	return { containers: kept, places: places.filter(({ id }) => kept.some(({ place }) => place === id)) }
}
