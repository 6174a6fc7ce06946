import type { Viewer } from '@/lib/access/viewer'
import { consentFor, consentHash } from '@/lib/agreement/signing/consent'
import { defaultConsent } from '@/lib/agreement/signing/default-consent'
import type { Hash } from '@/lib/record/hash'
import { write } from '../../open'
import { append } from '../../record/append'
import { isFirst } from '../../record/once'
import { seal } from '../../record/seal'
import { agreementConsent } from '../../schema'
import type { Stamp } from '../../stamp'
import type { Denied } from '../../viewer'
import { consentOf, openingsOf } from './evidence'
import { type Answering, type Refused, stepTo } from './step'

export type Consenting = Answering & {
	/** Hash of the words that stood on the page. */
	readonly words: Hash
	/** Where one writes to about records. */
	readonly writeTo: string
}

/** Agrees to have the agreement on a screen, after it was opened; agreed to before, it stays as it was. */
export async function agreeToRecords(
	viewer: Viewer,
	consenting: Consenting,
	stamp: Stamp,
): Promise<{ readonly ok: true } | Refused | Denied> {
	return write((tx): { readonly ok: true } | Refused | Denied => {
		const at = stepTo(tx, viewer, consenting, 'sign', stamp)
		if (!at.ok) return at
		const { document: hash, writeTo, once } = consenting
		const { id, clientId: client, number } = at.found.row
		if (openingsOf(tx, hash, at.person).length === 0) return { ok: false, why: 'not opened' }
		if (consentOf(tx, hash, at.person) !== undefined) return { ok: true }
		const { studio, client: whose } = at.document
		const shown = consentFor(defaultConsent, { studio: studio.name, client: whose.name, writeTo })
		if (consentHash(shown) !== consenting.words) return { ok: false, why: 'other words' }
		if (!isFirst(tx, stamp, viewer, once)) return { ok: false, why: 'sent before' }
		const words = seal(tx, stamp, client, shown)
		const { version } = shown
		tx.insert(agreementConsent)
			.values({ id: stamp.id<'consent'>(), document: hash, personId: at.person, version, words, at: stamp.at })
			.run()
		append(tx, stamp, viewer, {
			act: 'electronic records agreed to',
			object: `agreement ${id}`,
			client,
			facts: { number, document: hash, version },
			sealed: words,
		})
		return { ok: true }
	})
}
