import 'server-only'
import { type RenewedAs, renewAgreement } from '@/db/agreements/studio/renew'
import type { Viewer } from '@/lib/access/viewer'
import type { Renewal } from '@/lib/agreement/renewal/renewed'
import { studioTold } from '@/lib/agreement/studio/told'
import { onceFor } from '@/lib/record/once-for'
import type { Day } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import { stamp } from '../start/clock'
import { log } from '../start/log'

type Picked = {
	readonly once: Id<'once'>
	readonly signBy: Day
	readonly pick: readonly Id<'agreement'>[]
	readonly renewalOf: (agreement: Id<'agreement'>) => Renewal
}

/** One agreement after it was tried: issued for another year where nothing is said against it. */
export type Outcome = { readonly agreement: Id<'agreement'>; readonly says: string | null }

const broken = 'It could not be issued: something failed here. Nothing of it was kept; try it again.'

function saysOf(said: RenewedAs): string | null {
	if (said.ok) return null
	if (said.why === 'hidden' || said.why === 'forbidden') return 'There is no such agreement.'
	return said.why === 'not ready' ? said.problems.map(({ says }) => says).join(' ') : studioTold[said.why]
}

/** Renews one by one, each wholly or not at all: one that is refused or fails keeps none of the others from it. */
export async function renewPicked(who: Viewer, { once, signBy, pick, renewalOf }: Picked): Promise<Outcome[]> {
	const outcomes: Outcome[] = []
	for (const agreement of pick) {
		const renewing = { agreement, renewal: renewalOf(agreement), signBy, once: onceFor(once, agreement) }
		try {
			outcomes.push({ agreement, says: saysOf(await renewAgreement(who, renewing, stamp())) })
		} catch (error) {
			log().error({ act: 'renewing failed', error: error instanceof Error ? error.message : 'unknown' })
			outcomes.push({ agreement, says: broken })
		}
		// Others are let in between two of them.
		await new Promise((resolve) => setImmediate(resolve))
	}
	return outcomes
}
