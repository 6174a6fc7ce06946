import type { Change } from '../../proposal/offer/changes'
import type { Problem } from '../../proposal/problem'
import type { Hash } from '../../record/hash'
import type { Cents } from '../../units/cents'
import type { Day, Moment } from '../../units/day'
import type { ClientId, Id } from '../../units/id'
import type { Ending } from '../ending/ending'
import type { AgreementFacts } from '../facts'
import type { MarginBeside } from '../renewal/margin-beside'
import type { Renewed } from '../renewal/renewed'
import type { Signature } from '../signing/signature'
import type { State } from '../state'
import type { FilledClause } from '../template/fill'
import type { Template } from '../template/template'
import type { Terms } from '../terms'

/** An agreement as the studio's pages show it: a row of the list, or the head of its own page. */
export type ListedAgreement = {
	readonly id: Id<'agreement'>
	readonly client: ClientId
	readonly name: string
	readonly state: State
	readonly number: number
	readonly issued: Hash | null
	readonly from: Day | null
	readonly to: Day | null
	readonly totalCents: Cents | null
	readonly signBy: Day | null
	readonly issuedAt: Moment | null
	readonly seenAt: Moment | null
	readonly remindedAt: Moment | null
	readonly answeredAt: Moment | null
	readonly undeliveredAt: Moment | null
	readonly holdsUntil: Day | null
}

export type AgreementList = {
	readonly today: Day
	readonly year: number
	/** Those in which an agreement holds, this one among them, the newest first. */
	readonly years: readonly number[]
	readonly timeZone: string
	readonly currency: string
	readonly rows: readonly ListedAgreement[]
}

export type ClientAgreement = Pick<ListedAgreement, 'id' | 'state' | 'from' | 'to'>

export type OnDesk = {
	readonly row: ListedAgreement
	readonly today: Day
	readonly timeZone: string
	readonly currency: string
	readonly version: number
	readonly terms: Terms
	readonly facts: AgreementFacts
	readonly template: Template
	/** The text as it would be issued; what is open stands in braces. */
	readonly clauses: readonly FilledClause[]
	readonly problems: readonly Problem[]
	/** From what was issued last; undefined where nothing was, or something is missing. */
	readonly changes: readonly Change[] | undefined
	readonly signatures: readonly { readonly at: Moment; readonly signature: Signature | undefined }[]
	readonly openings: readonly { readonly name: string; readonly as: 'page' | 'PDF'; readonly at: Moment }[]
	readonly ending: Ending | undefined
	/** What the client said when it was declined. */
	readonly declined: string | undefined
}

/** One that ends in a year, beside what it would be for the next. */
export type EndingAgreement = Pick<ListedAgreement, 'id' | 'name' | 'client'> & {
	readonly to: Day
	readonly next: Renewed
	/** Of each season of `next`, where it is fixed in both years and something was approved for it. */
	readonly margins: readonly (MarginBeside | null)[]
	/** The one that renews it, once there is one. */
	readonly renewedBy: Id<'agreement'> | null
}
export type Endings = {
	readonly year: number
	readonly today: Day
	readonly currency: string
	readonly endings: readonly EndingAgreement[]
}
