import type { AgreementDocument } from '@/lib/agreement/document/document'
import { clashInWords } from '@/lib/money/words/bill'
import type { Problem } from '@/lib/proposal/problem'
import { billedTwice } from '../money/clashes'
import type { Reading } from '../open'
import type { FoundAgreement } from './find'

/** Seasons that a document would ask for although an approved proposal or another signed agreement does. */
export const billedTwiceProblems = (db: Reading, found: FoundAgreement, document: AgreementDocument): Problem[] =>
	billedTwice(db, found, { document }).map((clash) => ({ at: 'seasons', says: clashInWords(clash) }))
