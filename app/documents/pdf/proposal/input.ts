import type { Offer } from '@/lib/proposal/offer/offer'
import type { Approved } from '@/lib/proposal/offer/receipt'
import type { Hash } from '@/lib/record/hash'
import type { Moment } from '@/lib/units/day'
import type { Paper } from '../paper'

/** Frozen data alone: the revision, and the approval that was given to it. */
export type ProposalPaper = {
	readonly offer: Offer
	readonly approval: Approved
	/** Of the revision. */
	readonly hash: Hash
	/** When it was approved: the file's dates. */
	readonly at: Moment
	readonly paper: Paper
}

/** What was approved before one wall, in pixels. */
export type Pictured = { readonly caption: string; readonly jpeg: Buffer }
