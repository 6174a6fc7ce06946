import { and, eq, isNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { ProposalId } from '@/lib/units/id'
import { read, write } from '../open'
import { append } from '../record/append'
import { proposal } from '../schema'
import type { Stamp } from '../stamp'
import { findProposal } from './find'

/** Notes that a contact opened the revision that stands: once, so that reading it again writes nothing. */
export async function markSeen(viewer: Viewer, id: ProposalId, stamp: Stamp): Promise<void> {
	const isNew = read((db) => {
		const found = findProposal(db, viewer, 'mark as seen', id, stamp)
		return found.ok && found.row.revisionHash !== null && found.row.seenAt === null
	})
	if (!isNew) return
	write((tx) => {
		const found = findProposal(tx, viewer, 'mark as seen', id, stamp)
		if (!found.ok) return
		const unseen = and(eq(proposal.id, id), isNull(proposal.seenAt))
		if (tx.update(proposal).set({ seenAt: stamp.at }).where(unseen).run().changes === 0) return
		const { clientId: client, revisionNumber: number } = found.row
		append(tx, stamp, viewer, { act: 'proposal seen', object: `proposal ${id}`, client, facts: { number } })
	})
}
