import type { Hex } from '../../../units/hex'
import type { ClientId, PlaceId } from '../../../units/id'

/** A palette of another time or door, its leading colours first. */
export type OtherPalette = { readonly name: string; readonly hexes: readonly Hex[] }

export type Neighbour = {
	readonly client: ClientId
	readonly name: string
	/** The place of this draft's client that is in the same street. */
	readonly place: PlaceId
	/** What is drafted, offered or chosen there this season. */
	readonly palettes: readonly OtherPalette[]
}

/** What a draft is held against beyond its own door. It names other clients: the studio's alone. */
export type Around = {
	/** What this client chose a year ago, in the same quarter; null where nothing was. */
	readonly lastYear: OtherPalette | null
	readonly neighbours: readonly Neighbour[]
}

export const nothingAround: Around = { lastYear: null, neighbours: [] }
