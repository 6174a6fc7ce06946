import { z } from 'zod'

/** What a material is to the studio: decides its loss, its markup and its class of tax. */
export const kinds = ['fresh', 'live', 'faux', 'ornament', 'light', 'mechanics'] as const
/** What one piece of it is to the hands: decides the minutes that it takes. */
export const pieces = [
	'green',
	'branch',
	'accent',
	'plant',
	'string',
	'cluster to make',
	'cluster kept',
	'none',
] as const
export const roles = ['thriller', 'filler', 'spiller', 'accent', 'mechanics'] as const
export const units = ['stem', 'kg', 'litre', 'string', 'piece'] as const
/** Whose a thing is: sold becomes the client's, lent comes back to the studio, own was the client's before. */
export const holdings = ['sold', 'lent', 'own'] as const
export const hazards = ['poisonous to people', 'poisonous to pets', 'small parts'] as const

export const kindSchema = z.enum(kinds)
export const roleSchema = z.enum(roles)
export const holdingSchema = z.enum(holdings)

export type Kind = (typeof kinds)[number]
export type Piece = (typeof pieces)[number]
export type Role = (typeof roles)[number]
export type Unit = (typeof units)[number]
export type Holding = (typeof holdings)[number]
export type Hazard = (typeof hazards)[number]

export type LendableKind = 'faux' | 'ornament' | 'light'

/** A fresh stem does not come back: only what lasts can be lent. */
export const canBeLent = (kind: Kind): kind is LendableKind =>
	kind === 'faux' || kind === 'ornament' || kind === 'light'
