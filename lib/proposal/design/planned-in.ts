import { type Planned, planned } from '../../recipe/planned'
import type { DraftOption } from '../draft'
import type { Card, Facts } from '../facts'

/** What an option puts into a container, with the materials as they are known. */
export function plannedIn(
	{ pots }: DraftOption,
	{ id }: Pick<Card, 'id'>,
	{ materials }: Pick<Facts, 'materials'>,
): Planned[] {
	const lines = pots.find(({ container }) => container === id)?.lines ?? []
	return planned(
		lines.map(({ material, role, count }) => ({ material, role, count: count.value })),
		materials,
	)
}
