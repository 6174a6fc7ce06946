import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { sha256 } from '@/lib/record/hash'
import { read, write } from '../../open'
import { append } from '../../record/append'
import { sealedBody } from '../../record/seal'
import { agreementPaper } from '../../schema'
import type { Stamp } from '../../stamp'
import { denied } from '../../viewer'
import type { PaperDue } from './due'
import { papersOnDisk, removePapers, writePaper } from './files'

type Made = Pick<PaperDue, 'hash' | 'head' | 'document'> & { readonly bytes: Uint8Array }

/**
 * Keeps the sealed file of a document, then its row and the line that tells of it. All in one turn of this process: what
 * stands is never written over, and a crash between leaves a file without a row, which is made anew.
 * @returns how many were kept: none when it was before, or was erased meanwhile
 */
export async function keepPaper(viewer: Viewer, { hash, head, document, bytes }: Made, stamp: Stamp): Promise<0 | 1> {
	if (denied(viewer, 'keep house', null) !== null) return 0
	return write((tx): 0 | 1 => {
		const [kept] = tx.select().from(agreementPaper).where(eq(agreementPaper.document, hash)).all()
		if (kept !== undefined || sealedBody(tx, hash) === undefined) return 0
		writePaper(hash, bytes)
		const its = sha256(bytes)
		const row = { document: hash, sha256: its, bytes: bytes.length, headSeq: head.seq, head: head.hash, at: stamp.at }
		tx.insert(agreementPaper).values(row).run()
		append(tx, stamp, viewer, {
			act: 'agreement paper kept',
			object: `agreement ${document.agreement}`,
			client: document.client.id,
			facts: { number: document.number, document: hash, sha256: its },
		})
		return 1
	})
}

/** Files that no row names, as a crash between file and row leaves them. */
export async function sweepPapers(viewer: Viewer): Promise<number> {
	if (denied(viewer, 'keep house', null) !== null) return 0
	const kept = new Set(
		read((db) => db.select({ document: agreementPaper.document }).from(agreementPaper).all()).map(
			({ document }) => document,
		),
	)
	const left = papersOnDisk().filter((document) => !kept.has(document))
	removePapers(left)
	return left.length
}
