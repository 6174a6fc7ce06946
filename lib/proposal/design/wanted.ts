import type { Wanted } from '../../recipe/library/substitutes'
import type { ContainerId } from '../../units/id'
import type { Draft } from '../draft'
import type { Facts } from '../facts'
import { cardsOf } from '../job-of'
import { monthOf } from './ask'

/**
 * What something is looked for with, to stand in for another: the month of the install, the light of the container,
 * and in winter, which live plants have to live through, the zone of its place. With no container named, of the first.
 */
export function wantedIn(
	draft: Pick<Draft, 'window' | 'containers'>,
	facts: Facts,
	container: ContainerId | null = null,
): Wanted {
	const cards = cardsOf(draft, facts)
	const card = cards.find(({ id }) => id === container) ?? cards[0]
	const place = facts.sites.find(({ id }) => id === card?.place)
	return {
		month: monthOf(draft, facts),
		zone: facts.season.quarter === 'winter' ? (place?.zone ?? null) : null,
		light: card?.light ?? 'part',
		lengths: facts.studio.lengths,
	}
}
