import { and, eq, inArray } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { emptyDraft } from '@/lib/proposal/draft'
import { afterErasure } from '@/lib/proposal/state'
import type { ClientId } from '@/lib/units/id'
import type { Tx } from '../../open'
import { append } from '../../record/append'
import { draft, draftMaterial, proposal } from '../../schema'
import type { Stamp } from '../../stamp'

/** What nobody but the studio ever saw: no revision and no answer stands on it. */
function deleteUnpublished(tx: Tx, of: ClientId): void {
	const unseen = and(eq(proposal.clientId, of), eq(proposal.revisionNumber, 0))
	const ids = tx
		.select({ id: proposal.id })
		.from(proposal)
		.where(unseen)
		.all()
		.map(({ id }) => id)
	tx.delete(draftMaterial).where(inArray(draftMaterial.proposalId, ids)).run()
	tx.delete(draft).where(inArray(draft.proposalId, ids)).run()
	tx.delete(proposal).where(inArray(proposal.id, ids)).run()
}

/** An erased client's proposals: what was offered lies sealed; drafts and the palette in the ledger go, what is open is taken back. */
export function closeProposals(tx: Tx, stamp: Stamp, viewer: Viewer, of: ClientId): void {
	deleteUnpublished(tx, of)
	const document = JSON.stringify(emptyDraft({ from: null, to: null, answerBy: null }))
	for (const { id, state } of tx.select().from(proposal).where(eq(proposal.clientId, of)).all()) {
		const to = afterErasure(state)
		tx.update(proposal).set({ palette: '', state: to }).where(eq(proposal.id, id)).run()
		tx.update(draft).set({ document }).where(eq(draft.proposalId, id)).run()
		if (to !== state) append(tx, stamp, viewer, { act: 'proposal withdrawn', object: `proposal ${id}`, client: of })
	}
}
