import { and, desc, eq, ne } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { documentChanges } from '@/lib/agreement/document/changes'
import type { AgreementDocument } from '@/lib/agreement/document/document'
import { changesTo, shownTo } from '@/lib/agreement/document/shown'
import type { AgreementPage, SignedBy } from '@/lib/agreement/signing/page'
import type { Change } from '@/lib/proposal/offer/changes'
import type { Hash } from '@/lib/record/hash'
import type { Id } from '@/lib/units/id'
import { type Reading, read } from '../open'
import { agreementDocument, agreementPaper } from '../schema'
import type { Stamp } from '../stamp'
import { denied } from '../viewer'
import { documentIn, issuedUnder } from './documents'
import { type FoundAgreement, findAgreement } from './find'
import { consentOf, openingsOf, signaturesUnder } from './signing/evidence'

const signedBy = (db: Reading, hash: Hash): SignedBy[] =>
	signaturesUnder(db, hash).map(({ side, at, signature }) => {
		const name = signature && (signature.is === 'on a screen' ? signature.typedName : undefined)
		const written = signature?.is === 'on paper' ? signature.signer : undefined
		const studio = signature?.is === 'by the studio' ? signature.name : undefined
		return { side, at, name: name ?? written ?? studio, isOnPaper: signature?.is === 'on paper' }
	})

type Standing = { readonly hash: Hash; readonly document: AgreementDocument | undefined }

/** The document to read this one beside. */
function before(db: Reading, { state, row }: FoundAgreement, { hash }: Standing): AgreementDocument | undefined {
	const inForce = state.is === 'drafting' ? null : state.inForce
	const beside = inForce === null || inForce === hash ? issuedUnder(db, row.id, hash)?.supersedes : inForce
	return beside === null || beside === undefined ? undefined : documentIn(db, beside)
}

const different = (db: Reading, found: FoundAgreement, standing: Standing): readonly Change[] => {
	const was = before(db, found, standing)
	return was === undefined || standing.document === undefined ? [] : documentChanges(was, standing.document)
}

const signedBefore = (db: Reading, id: Id<'agreement'>, hash: Hash) =>
	db
		.select({ hash: agreementDocument.hash, number: agreementDocument.number })
		.from(agreementPaper)
		.innerJoin(agreementDocument, eq(agreementDocument.hash, agreementPaper.document))
		.where(and(eq(agreementDocument.agreementId, id), ne(agreementDocument.hash, hash)))
		.orderBy(desc(agreementDocument.number))
		.all()

/** Undefined while nothing was issued, and for whoever may not see it. */
export async function readAgreement(
	viewer: Viewer,
	id: Id<'agreement'>,
	stamp: Pick<Stamp, 'at'>,
): Promise<AgreementPage | undefined> {
	return read((db) => {
		const found = findAgreement(db, viewer, 'see the agreement', id, stamp)
		if (!found.ok) return undefined
		const { issued: hash, signBy, issuedAt, clientId: client, number } = found.row
		if (hash === null || signBy === null || issuedAt === null) return undefined
		const document = documentIn(db, hash)
		const mayReadMoney = denied(viewer, 'read its money', client) === null
		const own = viewer.is === 'contact' ? viewer.person : null
		return {
			...{ client, state: found.state, today: found.today, timeZone: found.studio.timeZone },
			...{ number, hash, signBy, issuedAt },
			document: document && shownTo(document, mayReadMoney),
			changes: changesTo(different(db, found, { hash, document }), mayReadMoney),
			signatures: signedBy(db, hash),
			opened: own === null ? [] : openingsOf(db, hash, own),
			consent: own === null ? undefined : consentOf(db, hash, own),
			hasPaper: db.select().from(agreementPaper).where(eq(agreementPaper.document, hash)).all().length > 0,
			signedBefore: mayReadMoney ? signedBefore(db, id, hash) : [],
			maySign: denied(viewer, 'sign the agreement', client) === null,
		}
	})
}
