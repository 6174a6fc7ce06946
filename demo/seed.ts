import { viewerOf } from '@/db/viewer'
import type { Day, Moment } from '@/lib/units/day'
import type {
	ClientId,
	ContainerId,
	Id,
	MaterialId,
	PersonId,
	PlaceId,
	ProposalId,
	SeasonId,
	VisitId,
} from '@/lib/units/id'
import { tellCanaries, tellPlainly } from './cast/canary'
import { type MaterialKey, materials } from './cast/catalogue/materials'
import { type RecipeKey, recipes } from './cast/catalogue/recipes'
import { type ClientKey, clients } from './cast/clients'
import { people } from './cast/people'
import { type AutumnKey, autumnProposals, type WinterKey, winterProposals } from './cast/proposals/proposals'
import { type ContainerKey, containers } from './cast/sites/containers'
import { type PlaceKey, places } from './cast/sites/places'
import { staff, studio } from './cast/studio'
import { type RoundKey, reports, visits } from './cast/visits'
import { catalogue } from './play/catalogue'
import { arrivals } from './play/clients'
import { collecting } from './play/collection'
import { house } from './play/house'
import { keysOf, tableOf } from './play/keys'
import { agreeing } from './play/money/agreeing'
import { billing } from './play/money/billing'
import { post } from './play/post'
import { stories } from './play/proposals/stories'
import { type AnyPersonKey, emptyStage, type Stage } from './play/stage'
import { momentOn, play } from './play/timeline'
import { rounds } from './play/visits'
import { stampsFrom } from './stamps'

export type SeededPerson = { readonly id: PersonId; readonly name: string; readonly address: string }

/** The cast as it stands in the record, by what each is to the story. */
export type Seeded = {
	readonly today: Day
	/** Today at noon or so, after everything that was played. */
	readonly now: Moment
	readonly studio: typeof studio
	readonly people: Readonly<Record<AnyPersonKey, SeededPerson>>
	readonly clients: Readonly<Record<ClientKey, { readonly id: ClientId; readonly name: string }>>
	readonly places: Readonly<Record<PlaceKey, PlaceId>>
	readonly containers: Readonly<Record<ContainerKey, ContainerId>>
	readonly materials: Readonly<Record<MaterialKey, MaterialId>>
	readonly recipes: Readonly<Record<RecipeKey, Id<'recipe'>>>
	readonly seasons: { readonly winter: SeasonId; readonly autumn: SeasonId }
	/** This winter's, by client. */
	readonly proposals: Readonly<Record<WinterKey, ProposalId>>
	/** Those of the autumn before, by client. */
	readonly autumn: Readonly<Record<AutumnKey, ProposalId>>
	readonly visits: Readonly<Record<RoundKey, VisitId>>
}

function castOf(stage: Stage): Seeded {
	const everybody = { ...staff, ...people }
	return {
		today: stage.today,
		now: momentOn(stage.today, 0, '16:00'),
		studio,
		people: tableOf(keysOf(everybody), (key) => ({ id: stage.people.of(key), ...everybody[key] })),
		clients: tableOf(keysOf(clients), (key) => ({ id: stage.clients.of(key), name: clients[key].name })),
		places: tableOf(keysOf(places), stage.places.of),
		containers: tableOf(keysOf(containers), stage.containers.of),
		materials: tableOf(keysOf(materials), stage.materials.of),
		recipes: tableOf(keysOf(recipes), stage.recipes.of),
		seasons: { winter: stage.seasons.of('winter'), autumn: stage.seasons.of('autumn') },
		proposals: tableOf(keysOf(winterProposals), stage.winter.of),
		autumn: tableOf(keysOf(autumnProposals), stage.autumn.of),
		visits: tableOf(keysOf({ ...visits, ...reports }), stage.visits.of),
	}
}

export type Play = {
	readonly today: Day
	readonly canary?: boolean
	/** With agreements and money; most tests begin without, and make their own. */
	readonly agreed?: boolean
}

/**
 * Plays the cast's last five months into an opened, migrated and empty database, through the same functions that the
 * pages call. The same `today` gives the same rows, byte for byte.
 */
export async function seed({ today, canary = false, agreed = false }: Play): Promise<Seeded> {
	const stage = emptyStage(today, canary ? tellCanaries : tellPlainly, viewerOf)
	const prepared = [...house(stage), ...catalogue(stage), ...arrivals(stage), ...collecting(stage)]
	const year = agreed ? [...agreeing(stage), ...billing(stage)] : []
	const acts = [...prepared, ...stories(stage), ...rounds(stage), ...year, ...post(stage)]
	await play(acts, stampsFrom(`sedge and lantern ${today}`))
	return castOf(stage)
}
