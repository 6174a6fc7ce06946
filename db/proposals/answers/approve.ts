import type { Viewer } from '@/lib/access/viewer'
import { wordsIn } from '@/lib/pricing/cost/words'
import { take, type Wanted } from '@/lib/proposal/answer'
import { standing } from '@/lib/season/standing'
import { write } from '../../open'
import { isFirst } from '../../record/once'
import type { Stamp } from '../../stamp'
import { ratesOf } from '../../studio/rates'
import { inputsIn } from '../documents'
import { keep } from './keep'
import { type Answered, type Answering, open } from './open'
import { whoHears } from './who-hears'

export type Approval = Answering & Wanted & { readonly purchaseOrder: string }

/** Approves one option with its extras and what is left out, of exactly the revision that was read. */
export async function approve(viewer: Viewer, approval: Approval, stamp: Stamp): Promise<Answered> {
	return write((tx): Answered => {
		const at = open(tx, viewer, approval, 'approve', stamp)
		if (!at.ok) return at
		const taken = take(at.offer, approval)
		if (!taken.ok) return taken
		const inputs = inputsIn(tx, at.revision)
		if (inputs === undefined) return { ok: false, why: 'erased' }
		if (!isFirst(tx, stamp, viewer, approval.once)) return { ok: false, why: 'sent before' }
		const words = wordsIn(taken.quote.currency)
		const { browser, purchaseOrder } = approval
		const reference = keep(
			tx,
			viewer,
			at,
			{
				kind: 'approval',
				act: 'proposal approved',
				words: { browser, purchaseOrder, notes: [] },
				taken,
				ledger: standing(at.offer, inputs, ratesOf(tx, at.revision.ratesVersion), words, taken),
				mails: whoHears(tx, at, { client: 'approved', studio: 'approval received' }),
			},
			stamp,
		)
		return { ok: true, reference }
	})
}
