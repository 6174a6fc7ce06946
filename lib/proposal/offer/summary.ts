import { capital, list } from '../../format/words'
import { type Hazard, type Role, roles } from '../../recipe/material'
import type { OfferLine } from './offer'

/** What a role is called to a client. */
const places: Record<Role, string> = {
	thriller: 'Up the middle',
	filler: 'Filling out',
	spiller: 'Over the rim',
	accent: 'Accents',
	mechanics: 'To hold it',
}

export type Layer = {
	readonly role: Role
	readonly place: string
	readonly words: string
	readonly hazards: string | null
}

const inWords: Record<Hazard, string> = {
	'poisonous to people': 'poisonous if eaten',
	'poisonous to pets': 'poisonous to pets',
	'small parts': 'small parts',
}

/** What is in a pot, layer by layer, as one would tell a neighbour; mechanics are not told. */
export function layers(lines: readonly OfferLine[]): Layer[] {
	return roles
		.filter((role) => role !== 'mechanics')
		.map((role) => ({ role, of: lines.filter((line) => line.role === role) }))
		.filter(({ of }) => of.length > 0)
		.map(({ role, of }) => {
			const found = new Set(of.flatMap((line) => line.hazards))
			return {
				role,
				place: places[role],
				words: capital(list([...new Set(of.map(({ name }) => name))])),
				hazards: found.size === 0 ? null : list([...found].map((hazard) => inWords[hazard])),
			}
		})
}
