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

export type Layer = { readonly role: Role; readonly place: string; readonly words: string }

const inWords: Record<Hazard, string> = {
	'poisonous to people': 'poisonous if eaten',
	'poisonous to pets': 'poisonous to pets',
	'small parts': 'small parts',
}

/** "boxwood (poisonous if eaten and poisonous to pets)" */
const named = ({ name, hazards }: OfferLine): string =>
	hazards.length === 0 ? name : `${name} (${list(hazards.map((hazard) => inWords[hazard]))})`

/** What is in a pot, layer by layer, as one would tell a neighbour, each hazard beside its name; mechanics are not told. */
export function layers(lines: readonly OfferLine[]): Layer[] {
	return roles
		.filter((role) => role !== 'mechanics')
		.map((role) => ({ role, of: lines.filter((line) => line.role === role) }))
		.filter(({ of }) => of.length > 0)
		.map(({ role, of }) => ({ role, place: places[role], words: capital(list([...new Set(of.map(named))])) }))
}
