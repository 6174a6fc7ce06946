import 'server-only'
import { publish } from '@/db/proposals/publish'
import type { Viewer } from '@/lib/access/viewer'
import { type NotPublished, notPublishedInWords } from '@/lib/proposal/desk/publish-told'
import { onceFor } from '@/lib/record/once-for'
import type { Id, ProposalId, SeasonId } from '@/lib/units/id'
import { stamp } from '../start/clock'
import { log } from '../start/log'

type Picked = {
	readonly season: SeasonId
	readonly once: Id<'once'>
	readonly pick: readonly { readonly proposal: ProposalId; readonly version: number }[]
}

/** One draft after it was tried: published where nothing is said against it. */
export type Outcome = { readonly proposal: ProposalId; readonly says: string | null }

const broken = 'It could not be published: something failed here. Nothing of it was kept; try it again.'

/** Publishes one by one, each wholly or not at all: one that is refused or fails keeps none of the others from it. */
export async function publishPicked(who: Viewer, { season, once, pick }: Picked): Promise<Outcome[]> {
	const outcomes: Outcome[] = []
	for (const { proposal, version } of pick) {
		const publishing = { proposal, version, within: season, once: onceFor(once, proposal) }
		try {
			const done = await publish(who, publishing, stamp())
			outcomes.push({ proposal, says: done.ok ? null : notPublishedInWords(whyOf(done.why)) })
		} catch (error) {
			log().error({ act: 'publishing failed', error: error instanceof Error ? error.message : 'unknown' })
			outcomes.push({ proposal, says: broken })
		}
		// Others are let in between two of them.
		await new Promise((resolve) => setImmediate(resolve))
	}
	return outcomes
}

const whyOf = (why: NotPublished | 'forbidden'): NotPublished => (why === 'forbidden' ? 'hidden' : why)
