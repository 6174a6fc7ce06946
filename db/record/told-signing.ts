import { eq } from 'drizzle-orm'
import type { Reading } from '../open'
import { agreementConsent, agreementDocument, agreementOpening, agreementPaper } from '../schema'
import type { AgreementEvidence } from './told-agreements'

const openings = (db: Reading): AgreementEvidence[] =>
	db
		.select({ it: agreementOpening, of: agreementDocument })
		.from(agreementOpening)
		.innerJoin(agreementDocument, eq(agreementDocument.hash, agreementOpening.document))
		.all()
		.map(({ it: { as, at, personId: by, document }, of: { agreementId, number } }) => ({
			...{ act: 'agreement opened', at, by, object: `agreement ${agreementId}`, sealed: null },
			facts: { number, document, as },
			what: `an opening of issue ${number} of agreement ${agreementId}`,
		}))

const consents = (db: Reading): AgreementEvidence[] =>
	db
		.select({ it: agreementConsent, of: agreementDocument })
		.from(agreementConsent)
		.innerJoin(agreementDocument, eq(agreementDocument.hash, agreementConsent.document))
		.all()
		.map(({ it: { version, words, at, personId: by, document }, of: { agreementId, number } }) => ({
			...{ act: 'electronic records agreed to', at, by, object: `agreement ${agreementId}`, sealed: words },
			facts: { number, document, version },
			what: `a consent to issue ${number} of agreement ${agreementId}`,
		}))

const papers = (db: Reading): AgreementEvidence[] =>
	db
		.select({ it: agreementPaper, of: agreementDocument })
		.from(agreementPaper)
		.innerJoin(agreementDocument, eq(agreementDocument.hash, agreementPaper.document))
		.all()
		.map(({ it: { at, sha256, document }, of: { agreementId, number } }) => ({
			...{ act: 'agreement paper kept', at, by: 'system', object: `agreement ${agreementId}`, sealed: null },
			facts: { number, document, sha256 },
			what: `the paper of issue ${number} of agreement ${agreementId}`,
		}))

/** What came before a signature and after it: openings, consents and kept files. */
export const signingEvidence = (db: Reading): AgreementEvidence[] => [...openings(db), ...consents(db), ...papers(db)]
