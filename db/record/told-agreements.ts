import { eq } from 'drizzle-orm'
import type { RecordedAct } from '@/lib/record/acts'
import type { Entry } from '@/lib/record/chain'
import { sha256 } from '@/lib/record/hash'
import type { Reading } from '../open'
import { agreementDocument, agreementSignature, agreementTemplate } from '../schema'
import { signingEvidence } from './told-signing'

/** What a line has to say of a piece of evidence, and what that piece is called. */
export type AgreementEvidence = Pick<Entry, 'at' | 'object' | 'facts' | 'sealed'> & {
	readonly act: RecordedAct
	/** A client's signature on paper is written down by the studio: who it was is compared, not as what. */
	readonly by: string
	readonly what: string
}

export const agreementActs = [
	'agreement template changed',
	'agreement issued',
	'agreement signed',
	'agreement opened',
	'electronic records agreed to',
	'agreement paper kept',
] as const satisfies readonly RecordedAct[]

const templates = (db: Reading): AgreementEvidence[] =>
	db
		.select()
		.from(agreementTemplate)
		.all()
		.map(({ version, document, madeAt: at, madeBy: by }) => ({
			...{ act: 'agreement template changed', at, by, object: `agreement template ${version}`, sealed: null },
			facts: { version, document: sha256(document) },
			what: `the agreement template ${version}`,
		}))

/** A document is told of with the studio's signature to it; one without says so by sealing nothing. */
function documents(db: Reading): AgreementEvidence[] {
	const signed = db.select().from(agreementSignature).where(eq(agreementSignature.side, 'studio')).all()
	const wordsOf = new Map(signed.map(({ document, words }) => [document, words]))
	return db
		.select()
		.from(agreementDocument)
		.all()
		.map(({ hash, agreementId, number, issuedAt: at, issuedBy: by }) => ({
			...{ act: 'agreement issued', at, by, object: `agreement ${agreementId}` },
			facts: { number, document: hash },
			sealed: wordsOf.get(hash) ?? null,
			what: `issue ${number} of agreement ${agreementId}`,
		}))
}

/** The studio's is given by the line that issues: where both say the same, they are one. */
const signatures = (db: Reading): AgreementEvidence[] =>
	db
		.select({ given: agreementSignature, to: agreementDocument })
		.from(agreementSignature)
		.innerJoin(agreementDocument, eq(agreementDocument.hash, agreementSignature.document))
		.all()
		.map(({ given: { side, at, by, words }, to: { agreementId, number, hash } }) => ({
			act: side === 'studio' ? 'agreement issued' : 'agreement signed',
			...{ at, by, object: `agreement ${agreementId}`, sealed: words },
			facts: { number, document: hash },
			what: `the ${side}’s signature to issue ${number} of agreement ${agreementId}`,
		}))

/** Clauses, documents, signatures and what belongs to a signing, each as the line has it that tells of it. */
export const agreementEvidence = (db: Reading): AgreementEvidence[] => [
	...templates(db),
	...documents(db),
	...signatures(db),
	...signingEvidence(db),
]
