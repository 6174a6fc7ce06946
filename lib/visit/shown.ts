import type { Quarter } from '../season/season'
import type { Day } from '../units/day'
import type { ClientId, PhotoId, PlaceId, VisitId } from '../units/id'
import type { PhotoSide, VisitKind, VisitState } from './visit'

export type VisitPhoto = {
	readonly id: PhotoId
	readonly side: PhotoSide
	readonly width: number
	readonly height: number
}

/** A place by name, to be chosen from. */
export type NamedPlace = { readonly id: PlaceId; readonly name: string }

/** A visit as the studio reads it. */
export type StudioVisit = {
	readonly id: VisitId
	readonly client: ClientId
	readonly clientName: string
	readonly place: PlaceId | null
	/** Empty for all of the client's places. */
	readonly placeName: string
	readonly season: { readonly quarter: Quarter; readonly year: number; readonly from: Day }
	readonly kind: VisitKind
	readonly state: VisitState
	readonly day: Day | null
	readonly came: string
	readonly clientNote: string
	readonly studioNote: string
	/** Empty where nobody said that something is wrong. */
	readonly reported: string
	readonly reportedBy: string
	readonly reportedOn: Day | null
	readonly createdOn: Day
	readonly photos: readonly VisitPhoto[]
}

/** A visit as its client reads it: what the studio notes for itself is not in it. */
export type ClientVisit = Pick<StudioVisit, 'id' | 'season' | 'kind' | 'state' | 'day' | 'came' | 'photos'> & {
	/** Null for all of their places. */
	readonly place: string | null
	/** Of the visit; when it was asked for, while it has no day. */
	readonly on: Day
	readonly note: string
	/** What they said is wrong; empty for any other visit. */
	readonly reported: string
	readonly reportedOn: Day | null
}
