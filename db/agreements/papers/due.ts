import { and, asc, eq, isNull, notInArray } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { AgreementDocument } from '@/lib/agreement/document/document'
import { type Consent, consentSchema } from '@/lib/agreement/signing/consent'
import type { Signature } from '@/lib/agreement/signing/signature'
import type { LengthUnit } from '@/lib/format/length'
import type { Hash } from '@/lib/record/hash'
import type { Moment } from '@/lib/units/day'
import type { PersonId } from '@/lib/units/id'
import { type Reading, read } from '../../open'
import { unseal } from '../../record/seal'
import { agreementConsent, agreementPaper, agreementSignature, event, studio } from '../../schema'
import { denied } from '../../viewer'
import { documentIn } from '../documents'
import { signaturesUnder } from '../signing/evidence'

/** All that the file of a signed document is made from: frozen rows alone. */
export type PaperDue = {
	readonly hash: Hash
	readonly document: AgreementDocument
	readonly signatures: readonly Signature[]
	readonly consent: Consent | null
	/** The line that tells of the client's signature. */
	readonly head: { readonly seq: number; readonly hash: Hash }
	/** When both had signed. */
	readonly at: Moment
	readonly timeZone: string
	readonly lengths: LengthUnit
}

type Row = typeof agreementSignature.$inferSelect

/** Signed by the client, so by both, and without a file so far. */
const signedWithout = (db: Reading, but: readonly Hash[]): Row[] =>
	db
		.select({ row: agreementSignature })
		.from(agreementSignature)
		.leftJoin(agreementPaper, eq(agreementPaper.document, agreementSignature.document))
		.where(
			and(
				eq(agreementSignature.side, 'client'),
				isNull(agreementPaper.document),
				notInArray(agreementSignature.document, [...but]),
			),
		)
		.orderBy(asc(agreementSignature.at), asc(agreementSignature.id))
		.all()
		.map(({ row }) => row)

/** The words on electronic records as the signer had them; null where it was signed on paper. */
function consentTo(db: Reading, document: Hash, person: PersonId): Consent | null {
	const theirs = and(eq(agreementConsent.document, document), eq(agreementConsent.personId, person))
	const [row] = db.select({ words: agreementConsent.words }).from(agreementConsent).where(theirs).all()
	return (row && consentSchema.safeParse(unseal(db, row.words)).data) ?? null
}

function dueOf(db: Reading, { document: hash, words, by, at }: Row): PaperDue | undefined {
	const document = documentIn(db, hash)
	const signatures = signaturesUnder(db, hash).flatMap(({ signature }) => (signature === undefined ? [] : [signature]))
	const [head] = db.select({ seq: event.seq, hash: event.hash }).from(event).where(eq(event.sealed, words)).all()
	const [house] = db.select().from(studio).all()
	if (document === undefined || signatures.length < 2 || head === undefined || house === undefined) return undefined
	const isOnScreen = signatures.some(({ is }) => is === 'on a screen')
	const consent = isOnScreen ? consentTo(db, hash, by) : null
	const { timeZone, lengths } = house
	return { hash, document, signatures, consent, head, at, timeZone, lengths }
}

/** The next document that both have signed and that has no file, but for those that could not be made just now; one whose words are erased gets none. */
export async function nextPaperDue(viewer: Viewer, but: readonly Hash[] = []): Promise<PaperDue | undefined> {
	if (denied(viewer, 'keep house', null) !== null) return undefined
	return read((db) => {
		for (const row of signedWithout(db, but)) {
			const due = dueOf(db, row)
			if (due !== undefined) return due
		}
		return undefined
	})
}
