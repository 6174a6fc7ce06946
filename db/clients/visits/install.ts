import { and, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { decide } from '@/lib/proposal/state'
import type { ProposalId } from '@/lib/units/id'
import { isAllIn } from '@/lib/visit/is-all-in'
import type { Tx } from '../../open'
import { offerIn, revisionOf } from '../../proposals/documents'
import { type Found, findProposal } from '../../proposals/find'
import { takeStep } from '../../proposals/steer'
import { visit } from '../../schema'
import type { Stamp } from '../../stamp'

function placesOf(tx: Tx, { row }: Found): string[] {
	const standing = revisionOf(tx, row.id, row.revisionNumber)
	const offer = standing && offerIn(tx, standing)
	return offer?.places.map(({ id }) => id) ?? []
}

/**
 * After an install was written down: once every place of the design was reached, the proposal is installed too.
 * @returns false when nobody has approved the design
 */
export function install(tx: Tx, stamp: Stamp, viewer: Viewer, of: ProposalId): boolean {
	const found = findProposal(tx, viewer, 'record visits', of, stamp)
	if (!found.ok) throw new Error(`install: proposal ${of} of a visit is not there`)
	const decision = decide(found.state, { do: 'install' })
	if (!decision.ok) return decision.why === 'installed'
	const made = and(eq(visit.proposalId, of), eq(visit.kind, 'install'), eq(visit.state, 'done'))
	const reached = tx.select({ place: visit.placeId }).from(visit).where(made).all()
	if (
		isAllIn(
			placesOf(tx, found),
			reached.map(({ place }) => place),
		)
	)
		takeStep(tx, stamp, viewer, found, { step: 'install', to: decision.to })
	return true
}
