import type { Viewer } from '@/lib/access/viewer'
import { type Asked, askedOf } from '@/lib/money/bills/quoted-season'
import { wordsIn } from '@/lib/pricing/cost/words'
import { take, type Wanted } from '@/lib/proposal/answer'
import { pricesOf } from '@/lib/proposal/picked/palettes'
import { standing } from '@/lib/season/standing'
import { billedTwice } from '../../money/clashes'
import { type Tx, write } from '../../open'
import { isFirst } from '../../record/once'
import type { Stamp } from '../../stamp'
import { ratesOf } from '../../studio/rates'
import { inputsIn } from '../documents'
import { keep } from './keep'
import { type Answered, type Answering, type Open, open } from './open'
import { whoHears } from './who-hears'

export type Approval = Answering & Wanted & { readonly purchaseOrder: string }

/** The agreement asks for a season that it prices, so a proposal of that season with a price of its own would ask again. */
function isBilledTwice(tx: Tx, { found }: Open, { due }: Asked): boolean {
	const isByAgreement = due.some(({ when }) => when.is === 'by agreement')
	const approval = { proposal: found.row.id, season: found.season, approvedOn: found.today, isByAgreement }
	return billedTwice(tx, found, { approval }).some(({ is }) => is === 'billed by both')
}

/** Approves one option with its extras and what is left out, of exactly the revision that was read. */
export async function approve(viewer: Viewer, approval: Approval, stamp: Stamp): Promise<Answered> {
	return write((tx): Answered => {
		const at = open(tx, viewer, approval, 'approve', stamp)
		if (!at.ok) return at
		const taken = take(at.offer, approval)
		if (!taken.ok) return taken
		if (isBilledTwice(tx, at, askedOf(taken.quote, pricesOf(taken))))
			return { ok: false, why: 'billed by the agreement' }
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
