import { and, eq } from 'drizzle-orm'
import { type AgreementDocument, documentSchema } from '@/lib/agreement/document/document'
import type { Hash } from '@/lib/record/hash'
import type { ClientId, Id } from '@/lib/units/id'
import type { Reading } from '../open'
import { unseal } from '../record/seal'
import { agreement, agreementDocument } from '../schema'

export type Issued = typeof agreementDocument.$inferSelect

/** The document of that hash, of that agreement and of no other. */
export function issuedUnder(db: Reading, agreement: Id<'agreement'>, hash: Hash): Issued | undefined {
	const named = and(eq(agreementDocument.hash, hash), eq(agreementDocument.agreementId, agreement))
	return db.select().from(agreementDocument).where(named).all()[0]
}

/** What was issued under a hash; undefined once the client's words are erased. */
export function documentIn(db: Reading, hash: Hash): AgreementDocument | undefined {
	const words = unseal(db, hash)
	return words === undefined ? undefined : documentSchema.parse(words)
}

/** The hashes of all that was issued to a client. */
export const documentsOf = (db: Reading, of: ClientId): Hash[] =>
	db
		.select({ hash: agreementDocument.hash })
		.from(agreementDocument)
		.innerJoin(agreement, eq(agreement.id, agreementDocument.agreementId))
		.where(eq(agreement.clientId, of))
		.all()
		.map(({ hash }) => hash)
