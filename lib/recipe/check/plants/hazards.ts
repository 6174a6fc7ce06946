import { capital, list } from '../../../format/words'
import { listedHazards } from '../../almanac/poison'
import type { Hazard } from '../../material'
import type { Planned } from '../../planned'
import { type Finding, finding } from '../finding'
import type { Check } from '../setting'

/** "poisonous to people and pets", "poisonous to pets and of small parts" */
function inWords(hazards: readonly Hazard[]): string {
	const to = (['people', 'pets'] as const).filter((whom) => hazards.includes(`poisonous to ${whom}`))
	const poison = to.length === 0 ? [] : [`poisonous to ${list(to)}`]
	return list([...poison, ...(hazards.includes('small parts') ? ['of small parts'] : [])])
}

function marked({ material: { id, name, hazards } }: Planned): Finding[] {
	if (hazards.length === 0) return []
	const mend = 'Leave it out where children or pets come by, or tell the client in writing.'
	return [finding(`hazards/${id}`, 'caution', `${capital(name)}: ${inWords(hazards)}.`, mend)]
}

/** On a published list, and its card does not say so. */
function unmarked({ material: { id, name, kind, hazards } }: Planned): Finding[] {
	const missing = listedHazards(name, kind).filter((hazard) => !hazards.includes(hazard))
	if (missing.length === 0) return []
	const says = `${capital(name)}: by published lists ${inWords(missing)}, and its card does not say so.`
	return [finding(`listed/${id}`, 'look again', says, 'Mark it on the card, so that clients are told.')]
}

/** Poison and small parts, line by line. */
export const hazards: Check = (lines) => lines.flatMap((line) => [...marked(line), ...unmarked(line)])
