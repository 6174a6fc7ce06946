import type { Viewer } from '@/lib/access/viewer'
import { type AskedNote, namedNotes } from '@/lib/proposal/offer/parts'
import { write } from '../../open'
import { isFirst } from '../../record/once'
import type { Stamp } from '../../stamp'
import { keep } from './keep'
import { type Answered, type Answering, open } from './open'
import { whoHears } from './who-hears'

/** Asks for changes, each to a named part, in one go. */
export async function askForChange(
	viewer: Viewer,
	asked: Answering & { readonly notes: readonly AskedNote[] },
	stamp: Stamp,
): Promise<Answered> {
	return write((tx): Answered => {
		const at = open(tx, viewer, asked, 'ask for a change', stamp)
		if (!at.ok) return at
		const notes = namedNotes(at.offer, asked.notes)
		if (notes === undefined) return { ok: false, why: 'that part is not in the design' }
		if (!isFirst(tx, stamp, viewer, asked.once)) return { ok: false, why: 'sent before' }
		const reference = keep(
			tx,
			viewer,
			at,
			{
				kind: 'change asked for',
				act: 'change asked for',
				words: { browser: asked.browser, purchaseOrder: '', notes },
				mails: whoHears(tx, at, { studio: 'change asked for' }),
			},
			stamp,
		)
		return { ok: true, reference }
	})
}
