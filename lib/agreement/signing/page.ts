import type { Change } from '../../proposal/offer/changes'
import type { Hash } from '../../record/is-hash'
import type { Day, Moment } from '../../units/day'
import type { ClientId, Id } from '../../units/id'
import type { ShownDocument } from '../document/shown'
import type { State } from '../state'
import type { Consent } from './consent'

export type Opened = { readonly as: 'page' | 'PDF'; readonly at: Moment }

export type Agreed = {
	readonly at: Moment
	readonly version: number
	/** What they were shown; undefined once erased. */
	readonly words: Consent | undefined
}

/** Under the document, as both sides read it. */
export type SignedBy = {
	readonly side: 'studio' | 'client'
	readonly at: Moment
	/** Undefined once erased. */
	readonly name: string | undefined
	readonly isOnPaper: boolean
}

/** What stands of an agreement behind the client's door: the document that was issued last. */
export type AgreementPage = {
	readonly client: ClientId
	readonly state: State
	readonly today: Day
	readonly timeZone: string
	readonly number: number
	readonly hash: Hash
	readonly signBy: Day
	readonly issuedAt: Moment
	/** Undefined once the client's words are erased. */
	readonly document: ShownDocument | undefined
	/** From the one in force, else from the one before. */
	readonly changes: readonly Change[]
	readonly signatures: readonly SignedBy[]
	/** The viewer's own, to this document. */
	readonly opened: readonly Opened[]
	readonly consent: Agreed | undefined
	readonly maySign: boolean
	/** The sealed file of it is kept. */
	readonly hasPaper: boolean
	/** Earlier documents that both have signed and whose sealed files are kept, the last first; none for who reads no money. */
	readonly signedBefore: readonly { readonly hash: Hash; readonly number: number }[]
}

/** An agreement on its client's own list. */
export type AgreementLine = {
	readonly agreement: Id<'agreement'>
	readonly state: State
	readonly from: Day
	readonly to: Day
	readonly signBy: Day
}
