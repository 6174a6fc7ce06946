import type { Viewer } from '@/lib/access/viewer'
import type { CostedPart } from '@/lib/pricing/cost-book'
import { price } from '@/lib/pricing/price'
import { everything } from '@/lib/pricing/quote/choice'
import { type Costing, costing } from '@/lib/pricing/quote/costing'
import { type Quote, quote } from '@/lib/pricing/quote/quote'
import type { Draft } from '@/lib/proposal/draft'
import type { Facts } from '@/lib/proposal/facts'
import { jobOf } from '@/lib/proposal/job-of'
import { makeOffer } from '@/lib/proposal/make'
import type { Offer } from '@/lib/proposal/offer'
import { type Problem, problems } from '@/lib/proposal/ready'
import { dayOf } from '@/lib/units/day'
import type { ProposalId } from '@/lib/units/id'
import { read } from '../open'
import type { Stamp } from '../stamp'
import { wordsIn } from './documents'
import { factsFor } from './facts'
import { findProposal } from './find'

export type PricedDraft = {
	readonly options: readonly { readonly key: string; readonly quote: Quote; readonly costing: Costing }[]
	/** Each extra as it would be added, by the first option. */
	readonly extras: readonly CostedPart[]
	readonly problems: readonly Problem[]
	readonly floorPercent: number
}

function factsOf(
	viewer: Viewer,
	id: ProposalId,
	stamp: Pick<Stamp, 'at'>,
): { facts: Facts; timeZone: string } | undefined {
	return read((db) => {
		const found = findProposal(db, viewer, 'see the costing', id, stamp)
		if (!found.ok || viewer.is !== 'staff') return undefined
		return { facts: factsFor(db, found, viewer.person), timeZone: found.studio.timeZone }
	})
}

/** Prices what is on the designer's desk, storing nothing. */
export async function priceDraft(
	viewer: Viewer,
	{ proposal, draft }: { proposal: ProposalId; draft: Draft },
	stamp: Pick<Stamp, 'at'>,
): Promise<PricedDraft | undefined> {
	const known = factsOf(viewer, proposal, stamp)
	if (known === undefined) return undefined
	const { facts, timeZone } = known
	const words = wordsIn(facts.studio.currency)
	const priced = draft.options.flatMap((option) => {
		const job = jobOf(draft, option, facts)
		return job === null ? [] : [{ key: option.key, ...price(job, words) }]
	})
	return {
		options: priced.map(({ key, list, costs }) => ({
			key,
			quote: quote(list, everything),
			costing: costing(list, costs, everything),
		})),
		extras: priced[0]?.costs.parts.filter(({ is }) => is === 'extra') ?? [],
		problems: problems(draft, facts, dayOf(stamp.at, timeZone)),
		floorPercent: facts.rates.marginFloorPercent,
	}
}

/** The draft as the client would see it: the same offer that publishing would freeze. */
export async function previewOffer(
	viewer: Viewer,
	{ proposal, draft }: { proposal: ProposalId; draft: Draft },
	stamp: Pick<Stamp, 'at'>,
): Promise<Offer | undefined> {
	const known = factsOf(viewer, proposal, stamp)
	if (known === undefined) return undefined
	const today = dayOf(stamp.at, known.timeZone)
	return makeOffer(draft, known.facts, wordsIn(known.facts.studio.currency).money, 1, today).offer
}
