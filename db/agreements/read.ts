import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { documentChanges } from '@/lib/agreement/document/changes'
import type { AgreementDocument } from '@/lib/agreement/document/document'
import { changesTo, type ShownDocument, shownTo } from '@/lib/agreement/document/shown'
import type { State } from '@/lib/agreement/state'
import type { Change } from '@/lib/proposal/offer/changes'
import type { Hash } from '@/lib/record/hash'
import type { Day, Moment } from '@/lib/units/day'
import type { ClientId, Id } from '@/lib/units/id'
import { type Reading, read } from '../open'
import { agreementPaper } from '../schema'
import type { Stamp } from '../stamp'
import { denied } from '../viewer'
import { documentIn, issuedUnder } from './documents'
import { type FoundAgreement, findAgreement } from './find'
import { type Agreed, consentOf, type Opened, openingsOf, signaturesUnder } from './signing/evidence'

/** Under the document, as both sides read it. */
export type SignedBy = {
	readonly side: 'studio' | 'client'
	readonly at: Moment
	/** Undefined once erased. */
	readonly name: string | undefined
	readonly isOnPaper: boolean
}

/** What stands of an agreement behind the client's door: the document that was issued last. */
export type AgreementPage = {
	readonly client: ClientId
	readonly state: State
	readonly today: Day
	readonly timeZone: string
	readonly number: number
	readonly hash: Hash
	readonly signBy: Day
	readonly issuedAt: Moment
	/** Undefined once the client's words are erased. */
	readonly document: ShownDocument | undefined
	/** From the one in force, else from the one before. */
	readonly changes: readonly Change[]
	readonly signatures: readonly SignedBy[]
	/** The viewer's own, to this document. */
	readonly opened: readonly Opened[]
	readonly consent: Agreed | undefined
	readonly maySign: boolean
	/** The sealed file of it is kept. */
	readonly hasPaper: boolean
}

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
			maySign: denied(viewer, 'sign the agreement', client) === null,
		}
	})
}
