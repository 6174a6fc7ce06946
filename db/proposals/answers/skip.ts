import type { Viewer } from '@/lib/access/viewer'
import { write } from '../../open'
import { isFirst } from '../../record/once'
import type { Stamp } from '../../stamp'
import { keep } from './keep'
import { type Answered, type Answering, open } from './open'
import { whoHears } from './who-hears'

export async function skipSeason(
	viewer: Viewer,
	skipped: Answering & { why: string },
	stamp: Stamp,
): Promise<Answered> {
	return write((tx): Answered => {
		const at = open(tx, viewer, skipped, 'skip', stamp)
		if (!at.ok) return at
		if (!isFirst(tx, stamp, viewer, skipped.once)) return { ok: false, why: 'sent before' }
		const notes = skipped.why === '' ? [] : [{ about: 'whole', words: skipped.why }]
		const reference = keep(
			tx,
			viewer,
			at,
			{
				kind: 'skip',
				act: 'season skipped',
				words: { browser: skipped.browser, purchaseOrder: '', notes },
				mails: whoHears(tx, at, { studio: 'skipped' }),
			},
			stamp,
		)
		return { ok: true, reference }
	})
}
