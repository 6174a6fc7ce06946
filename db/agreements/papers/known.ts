import { and, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { KnownPaper } from '@/lib/agreement/verify/compared'
import { fullDay } from '@/lib/format/day'
import type { Hash } from '@/lib/record/hash'
import { read } from '../../open'
import { agreement, agreementDocument, agreementPaper } from '../../schema'
import { timeZoneOf } from '../../studio/time-zone'
import { denied, visibleTo } from '../../viewer'
import { documentIn } from '../documents'

/** The kept files with this SHA-256 that the viewer may read, and the studio's time zone to tell of them in. */
export async function knownPapers(
	viewer: Viewer,
	sha256: Hash,
): Promise<{ readonly timeZone: string; readonly papers: readonly KnownPaper[] }> {
	return read((db) => {
		const rows = db
			.select({ paper: agreementPaper, row: agreement })
			.from(agreementPaper)
			.innerJoin(agreementDocument, eq(agreementDocument.hash, agreementPaper.document))
			.innerJoin(agreement, eq(agreement.id, agreementDocument.agreementId))
			.where(and(eq(agreementPaper.sha256, sha256), visibleTo(viewer, agreement.clientId)))
			.all()
		const papers = rows.flatMap(({ paper, row }): KnownPaper[] => {
			const document = documentIn(db, paper.document)
			if (document === undefined || denied(viewer, 'read its money', row.clientId) !== null) return []
			const { client, from, to } = document
			const name = `Agreement with ${client.name}, ${fullDay(from)} to ${fullDay(to)}`
			const isPast = row.inForce !== paper.document || row.state === 'ended'
			return [{ hash: paper.sha256, name, sealedAt: paper.at, isPast }]
		})
		return { timeZone: timeZoneOf(db), papers }
	})
}
