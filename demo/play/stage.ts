import type { Stamp } from '@/db/stamp'
import type { PlannedSeason } from '@/db/studio/seasons'
import type { Viewer } from '@/lib/access/viewer'
import type { Day } from '@/lib/units/day'
import type { ClientId, ContainerId, Id, MaterialId, PersonId, PlaceId, ProposalId, VisitId } from '@/lib/units/id'
import type { Tell } from '../cast/canary'
import type { MaterialKey } from '../cast/catalogue/materials'
import type { RecipeKey } from '../cast/catalogue/recipes'
import type { ClientKey } from '../cast/clients'
import type { PersonKey } from '../cast/people'
import type { AutumnKey, WinterKey } from '../cast/proposals/proposals'
import type { CastProposal } from '../cast/proposals/shape'
import type { ContainerKey } from '../cast/sites/containers'
import type { PlaceKey } from '../cast/sites/places'
import type { staff } from '../cast/studio'
import type { RoundKey } from '../cast/visits'
import { type Shelf, shelf } from './keys'

export type AnyPersonKey = PersonKey | keyof typeof staff

/** Everything that the play has made so far, by its name in the cast. */
export type Stage = {
	readonly today: Day
	readonly tell: Tell
	readonly designer: () => Promise<Viewer>
	readonly people: Shelf<AnyPersonKey, PersonId>
	readonly clients: Shelf<ClientKey, ClientId>
	readonly places: Shelf<PlaceKey, PlaceId>
	readonly containers: Shelf<ContainerKey, ContainerId>
	readonly materials: Shelf<MaterialKey, MaterialId>
	readonly recipes: Shelf<RecipeKey, Id<'recipe'>>
	readonly seasons: Shelf<'winter' | 'autumn', PlannedSeason['id']>
	readonly winter: Shelf<WinterKey, ProposalId>
	readonly autumn: Shelf<AutumnKey, ProposalId>
	readonly visits: Shelf<RoundKey, VisitId>
}

export function emptyStage(today: Day, tell: Tell, viewerOf: (who: PersonId) => Promise<Viewer>): Stage {
	const people = shelf<AnyPersonKey, PersonId>('person')
	return {
		today,
		tell,
		designer: () => viewerOf(people.of('designer')),
		people,
		clients: shelf('client'),
		places: shelf('place'),
		containers: shelf('container'),
		materials: shelf('material'),
		recipes: shelf('recipe'),
		seasons: shelf('season'),
		winter: shelf('winter proposal'),
		autumn: shelf('autumn proposal'),
		visits: shelf('visit'),
	}
}

/** One step of one proposal's story: where it stands in the play, and the stamp that it is done with. */
export type Scene = {
	readonly stage: Stage
	readonly quarter: 'winter' | 'autumn'
	readonly client: ClientKey
	readonly of: CastProposal
	readonly begun: (id: ProposalId) => void
	readonly id: () => ProposalId
	readonly stamp: Stamp
}
