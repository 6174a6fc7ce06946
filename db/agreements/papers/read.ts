import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { AgreementDocument } from '@/lib/agreement/document/document'
import type { LengthUnit } from '@/lib/format/length'
import { type Hash, sha256 } from '@/lib/record/hash'
import type { Moment } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import { type Reading, read } from '../../open'
import { agreementPaper, agreementSignature } from '../../schema'
import type { Stamp } from '../../stamp'
import { type Denied, hidden } from '../../viewer'
import { documentIn, issuedUnder } from '../documents'
import { type FoundAgreement, findAgreement } from '../find'
import { paperBytes } from './files'

/** The kept file, or what a copy to read before signing is drawn from. */
export type PaperToRead =
	| { readonly ok: true; readonly is: 'kept'; readonly bytes: Uint8Array<ArrayBuffer> }
	| {
			readonly ok: true
			readonly is: 'unsigned'
			readonly document: AgreementDocument
			readonly issuedAt: Moment
			readonly timeZone: string
			readonly lengths: LengthUnit
	  }
	| { readonly ok: false; readonly why: 'being made' }
	| Denied

/** @throws when the file is gone or is another than was kept: it is never made anew */
function kept(db: Reading, document: Hash): Uint8Array<ArrayBuffer> | undefined {
	const [row] = db.select().from(agreementPaper).where(eq(agreementPaper.document, document)).all()
	if (row === undefined) return undefined
	const bytes = paperBytes(document)
	if (bytes === undefined || sha256(bytes) !== row.sha256)
		throw new Error(`The paper of ${document} is not what was kept.`)
	return bytes
}

function latest(db: Reading, { row: { id }, studio }: FoundAgreement, issued: Hash): PaperToRead {
	const [document, row] = [documentIn(db, issued), issuedUnder(db, id, issued)]
	if (document === undefined || row === undefined) return hidden
	const bytes = kept(db, issued)
	if (bytes !== undefined) return { ok: true, is: 'kept', bytes }
	if (isSigned(db, issued)) return { ok: false, why: 'being made' }
	const { timeZone, lengths } = studio
	return { ok: true, is: 'unsigned', document, issuedAt: row.issuedAt, timeZone, lengths }
}

/** Of one that another has followed there is the kept file, or nothing. */
function earlier(db: Reading, id: Id<'agreement'>, document: Hash): PaperToRead {
	const isTheirs = issuedUnder(db, id, document) !== undefined && documentIn(db, document) !== undefined
	const bytes = isTheirs ? kept(db, document) : undefined
	return bytes === undefined ? hidden : { ok: true, is: 'kept', bytes }
}

const isSigned = (db: Reading, document: Hash) =>
	db
		.select({ side: agreementSignature.side })
		.from(agreementSignature)
		.where(eq(agreementSignature.document, document))
		.all()
		.some(({ side }) => side === 'client')

/**
 * The paper of the document that was issued last, or of an earlier one that both have signed and that is named: for who
 * may read its money, since it shows all of it.
 */
export async function readPaper(
	viewer: Viewer,
	{ agreement: id, document: named }: { readonly agreement: Id<'agreement'>; readonly document: Hash | null },
	stamp: Pick<Stamp, 'at'>,
): Promise<PaperToRead> {
	return read((db): PaperToRead => {
		const found = findAgreement(db, viewer, 'read its money', id, stamp)
		if (!found.ok) return found
		const { issued } = found.row
		if (issued === null) return hidden
		return named === null || named === issued ? latest(db, found, issued) : earlier(db, id, named)
	})
}
