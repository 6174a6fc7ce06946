import { and, asc, eq } from 'drizzle-orm'
import { consentSchema } from '@/lib/agreement/signing/consent'
import type { Agreed, Opened } from '@/lib/agreement/signing/page'
import { type Signature, signatureSchema } from '@/lib/agreement/signing/signature'
import type { Hash } from '@/lib/record/hash'
import type { Moment } from '@/lib/units/day'
import type { PersonId } from '@/lib/units/id'
import type { Reading } from '../../open'
import { unseal } from '../../record/seal'
import { agreementConsent, agreementOpening, agreementSignature } from '../../schema'

/** How somebody opened a document, the first way first. */
export const openingsOf = (db: Reading, document: Hash, person: PersonId): Opened[] =>
	db
		.select({ as: agreementOpening.as, at: agreementOpening.at })
		.from(agreementOpening)
		.where(and(eq(agreementOpening.document, document), eq(agreementOpening.personId, person)))
		.orderBy(asc(agreementOpening.at), asc(agreementOpening.id))
		.all()

/** That somebody agreed to have a document on a screen. */
export function consentOf(db: Reading, document: Hash, person: PersonId): Agreed | undefined {
	const theirs = and(eq(agreementConsent.document, document), eq(agreementConsent.personId, person))
	const [row] = db.select().from(agreementConsent).where(theirs).all()
	if (row === undefined) return undefined
	return { at: row.at, version: row.version, words: consentSchema.safeParse(unseal(db, row.words)).data }
}

export type Given = {
	readonly side: 'studio' | 'client'
	readonly by: PersonId
	readonly at: Moment
	/** Undefined once erased. */
	readonly signature: Signature | undefined
}

/** The signatures under a document. */
export const signaturesUnder = (db: Reading, document: Hash): Given[] =>
	db
		.select()
		.from(agreementSignature)
		.where(eq(agreementSignature.document, document))
		.all()
		.map(({ side, by, at, words }) => ({ side, by, at, signature: signatureSchema.safeParse(unseal(db, words)).data }))
