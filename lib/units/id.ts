import type { Brand } from './brand'

/** A UUID (RFC 9562) that names one thing of kind `Of`. */
export type Id<Of extends string> = Brand<string, Of>
export type PersonId = Id<'person'>
export type ClientId = Id<'client'>
export type PlaceId = Id<'place'>
export type ContainerId = Id<'container'>
export type MaterialId = Id<'material'>
export type SeasonId = Id<'season'>
export type ProposalId = Id<'proposal'>
export type VisitId = Id<'visit'>
export type PhotoId = Id<'photo'>

const shape = /^[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/

export const isId = (text: string): boolean => shape.test(text)

/** @throws when `text` is not a lower-case UUID */
export function id<Of extends string>(text: string): Id<Of> {
	if (!isId(text)) throw new Error(`id: "${text.slice(0, 60)}" is not a UUID`)
	return text as Id<Of>
}
