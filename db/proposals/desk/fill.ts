import { and, eq, isNull, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Fresh, Ground } from '@/lib/proposal/start/fresh'
import type { ClientId, ProposalId, SeasonId } from '@/lib/units/id'
import { isWithUs } from '../../clients/is-with-us'
import type { Tx } from '../../open'
import { append } from '../../record/append'
import { container, place } from '../../schema'
import type { Stamp } from '../../stamp'
import { type Denied, denied, hidden } from '../../viewer'
import { beginIn } from '../begin'
import { draftOf } from '../documents'
import { keepDraft, showInLedger } from '../draft'
import { factsFor, type Shared, siteColoursOf } from '../facts'
import { findProposal } from '../find'
import { aroundIn } from './around'

/** Why nothing was written: there is a draft with palettes already, or no container to fill. */
export type NotFilled = 'left alone' | 'no containers'
export type Filled<F extends Fresh> =
	| { readonly ok: true; readonly proposal: ProposalId; readonly fresh: F }
	| { readonly ok: false; readonly why: NotFilled; readonly proposal: ProposalId | null }
	| Denied

type Whose = { readonly client: ClientId; readonly season: SeasonId }
type From<F extends Fresh> = {
	/** What it is started from, as the record tells it. */
	readonly called: string
	readonly make: (ground: Ground) => F
	readonly shared?: Shared
}

function hasContainers(tx: Tx, of: ClientId): boolean {
	const standing = and(eq(place.clientId, of), isNull(container.retiredAt))
	const [row] = tx
		.select({ n: sql<number>`count(*)` })
		.from(container)
		.innerJoin(place, eq(place.id, container.placeId))
		.where(standing)
		.all()
	return (row?.n ?? 0) > 0
}

/**
 * Begins the proposal where there is none and fills its draft, if that has no palette yet and was never published:
 * what somebody has worked on is never written over.
 */
export function fillDraft<F extends Fresh>(
	tx: Tx,
	viewer: Viewer,
	of: Whose,
	{ called, make, shared }: From<F>,
	stamp: Stamp,
): Filled<F> {
	const no = denied(viewer, 'change the draft', of.client)
	if (no !== null || viewer.is !== 'staff') return no ?? hidden
	if (!isWithUs(tx, of.client)) return hidden
	if (!hasContainers(tx, of.client)) return { ok: false, why: 'no containers', proposal: null }
	const { once: _, ...unkeyed } = stamp
	const begun = beginIn(tx, viewer, of, unkeyed)
	if (!begun.ok) return begun
	const found = findProposal(tx, viewer, 'change the draft', begun.id, stamp)
	if (!found.ok) return found
	const { version, draft } = draftOf(tx, begun.id)
	if (draft.options.length > 0 || found.row.revisionNumber > 0)
		return { ok: false, why: 'left alone', proposal: begun.id }
	const facts = factsFor(tx, found, viewer.person, shared)
	const fresh = make({ draft, facts, site: siteColoursOf(tx, facts), around: aroundIn(tx, found, facts) })
	keepDraft(tx, begun.id, version + 1, fresh.draft, { at: stamp.at, by: viewer.person })
	showInLedger(tx, fresh.draft, facts)
	append(tx, stamp, viewer, {
		act: 'draft started',
		object: `proposal ${begun.id}`,
		client: of.client,
		facts: { from: called },
	})
	return { ok: true, proposal: begun.id, fresh }
}
