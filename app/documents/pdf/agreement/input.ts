import type { AgreementDocument } from '@/lib/agreement/document/document'
import type { Consent } from '@/lib/agreement/signing/consent'
import type { Signature } from '@/lib/agreement/signing/signature'
import type { Hash } from '@/lib/record/hash'
import type { Moment } from '@/lib/units/day'
import type { Paper } from '../paper'

/** A line of the studio's record and its hash: the whole record up to it gives this hash and no other. */
export type Head = { readonly seq: number; readonly hash: Hash }

/** What was signed, by whom, under which words, and where the record stood then. */
export type Signed = {
	readonly signatures: readonly Signature[]
	/** The words on electronic records as they were shown; null where all was signed on paper. */
	readonly consent: Consent | null
	readonly head: Head
}

/** Frozen data alone: the same input gives the same bytes. */
export type AgreementPaper = {
	readonly document: AgreementDocument
	/** Null: a copy for reading before signing. */
	readonly signed: Signed | null
	/** When the file is made: its dates. */
	readonly at: Moment
	readonly timeZone: string
	readonly paper: Paper
}
