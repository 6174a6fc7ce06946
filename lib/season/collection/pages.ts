import type { LibraryRecipe } from '../../proposal/design/propose'
import type { Problem } from '../../proposal/problem'
import type { Fit } from '../../proposal/start/fit'
import type { Kind, Role, Unit } from '../../recipe/material'
import type { ClientId, MaterialId, ProposalId, SeasonId } from '../../units/id'
import type { Season } from '../season'
import type { Collection } from './collection'

type PlannedSeason = Season & { readonly id: SeasonId }

/** A season's house designs with all that they are chosen from. */
export type CollectionPage = {
	readonly season: PlannedSeason
	/** 0 while nothing was kept. */
	readonly version: number
	readonly collection: Collection
	readonly recipes: readonly (Pick<LibraryRecipe, 'id' | 'name'> & { readonly isOfSeason: boolean })[]
	readonly materials: readonly {
		readonly id: MaterialId
		readonly name: string
		readonly role: Role
		readonly unit: Unit
		readonly kind: Kind
	}[]
	readonly problems: readonly Problem[]
	/** What stands in for materials that are no longer taken. */
	readonly standIns: readonly string[]
}

/** A client without a design for the season. */
export type Undrafted = {
	readonly id: ClientId
	readonly name: string
	readonly kind: 'business' | 'household'
	/** Its first place, and the wall there. */
	readonly place: string | null
	readonly wall: string | null
	readonly containers: number
}

/** How a draft of the season stands. */
export type DraftFit = {
	readonly proposal: ProposalId
	readonly client: ClientId
	readonly name: string
	readonly wall: string | null
	readonly hexes: string
	/** The place that its picture shows. */
	readonly place: string | null
	readonly fits: readonly Fit[]
}

/** To whom a season's house designs can be applied, and how its drafts stand. */
export type ToApply = {
	readonly season: PlannedSeason
	readonly problems: readonly Problem[]
	readonly clients: readonly Undrafted[]
	readonly drafts: readonly DraftFit[]
}
