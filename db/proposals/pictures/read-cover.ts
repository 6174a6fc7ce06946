import { eq, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { type Cover, coverOf } from '@/lib/proposal/offer/cover'
import type { KeptState } from '@/lib/proposal/state'
import { prepared, read } from '../../open'
import { proposal } from '../../schema'
import { denied } from '../../viewer'
import { offerIn, revisionOf } from '../documents'

const keyed = prepared((db) =>
	db
		.select({ id: proposal.id, number: proposal.revisionNumber, state: proposal.state })
		.from(proposal)
		.where(eq(proposal.cardKey, sql.placeholder('key')))
		.prepare(),
)

const takenBack: ReadonlySet<KeptState> = new Set(['withdrawn', 'cancelled'])

/** What the link of a design shows to whoever holds its key; undefined for no key, and of what was taken back. */
export async function readCover(viewer: Viewer, key: string): Promise<Cover | undefined> {
	if (denied(viewer, 'see a cover', null) !== null) return undefined
	return read((db) => {
		const [row] = keyed(db).all({ key })
		if (row === undefined || takenBack.has(row.state)) return undefined
		const standing = revisionOf(db, row.id, row.number)
		const offer = standing && offerIn(db, standing)
		return offer && coverOf(offer)
	})
}
