import { asc, eq, inArray } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Rates } from '@/lib/pricing/rates'
import type { RateEffect } from '@/lib/season/rate-effect'
import { weigh } from '@/lib/season/weigh'
import type { PersonId, ProposalId } from '@/lib/units/id'
import { type Reading, read } from '../open'
import { draftOf } from '../proposals/documents'
import { factsFor, type Shared, sharedIn } from '../proposals/facts'
import { findProposal } from '../proposals/find'
import { client, proposal, season } from '../schema'
import type { Stamp } from '../stamp'
import { denied } from '../viewer'

type Asking = { readonly viewer: Viewer; readonly by: PersonId; readonly shared: Shared }

function effectOn(
	db: Reading,
	{ viewer, by, shared }: Asking,
	id: ProposalId,
	next: Rates,
	stamp: Pick<Stamp, 'at'>,
): RateEffect | undefined {
	const found = findProposal(db, viewer, 'see the costing', id, stamp)
	if (!found.ok) return undefined
	const { draft } = draftOf(db, id)
	const facts = factsFor(db, found, by, shared)
	const { quarter, year } = found.season
	return {
		proposal: id,
		client: found.client.name,
		season: { quarter, year },
		was: weigh(draft, facts),
		becomes: weigh(draft, { ...facts, rates: next }),
	}
}

/** What other rates would do to every draft that is not published as it stands; nothing is stored. */
export async function rateEffects(
	viewer: Viewer,
	next: Rates,
	stamp: Pick<Stamp, 'at'>,
): Promise<readonly RateEffect[] | undefined> {
	if (denied(viewer, 'change settings', null) !== null || viewer.is !== 'staff') return undefined
	const by = viewer.person
	return read((db) => {
		const open = db
			.select({ id: proposal.id, season: proposal.seasonId })
			.from(proposal)
			.innerJoin(client, eq(client.id, proposal.clientId))
			.innerJoin(season, eq(season.id, proposal.seasonId))
			.where(inArray(proposal.state, ['drafting', 'change asked for']))
			.orderBy(asc(season.windowFrom), asc(client.name), asc(proposal.id))
			.all()
		const shared = new Map([...new Set(open.map((each) => each.season))].map((of) => [of, sharedIn(db, of, by)]))
		return open.flatMap(({ id, season: of }) => {
			const known = shared.get(of)
			return known === undefined ? [] : (effectOn(db, { viewer, by, shared: known }, id, next, stamp) ?? [])
		})
	})
}
