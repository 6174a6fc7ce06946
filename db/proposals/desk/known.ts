import type { Act } from '@/lib/access/table'
import type { Viewer } from '@/lib/access/viewer'
import type { SiteColour } from '@/lib/colour/palette/palette'
import type { Around } from '@/lib/proposal/design/around/around'
import type { Facts } from '@/lib/proposal/facts'
import type { ProposalId } from '@/lib/units/id'
import type { Reading } from '../../open'
import type { Stamp } from '../../stamp'
import { factsFor, siteColoursOf } from '../facts'
import { findProposal } from '../find'
import { aroundIn } from './around'

export type Known = {
	readonly facts: Facts
	readonly timeZone: string
	readonly site: readonly SiteColour[]
	readonly around: Around
}

/** What a draft on the desk is priced, checked and designed with; undefined for whoever may not `act`. */
export function knownFor(
	db: Reading,
	viewer: Viewer,
	act: Extract<Act, 'see the draft' | 'see the costing'>,
	id: ProposalId,
	stamp: Pick<Stamp, 'at'>,
): Known | undefined {
	const found = findProposal(db, viewer, act, id, stamp)
	if (!found.ok || viewer.is !== 'staff') return undefined
	const facts = factsFor(db, found, viewer.person)
	return { facts, timeZone: found.studio.timeZone, site: siteColoursOf(db, facts), around: aroundIn(db, found, facts) }
}
