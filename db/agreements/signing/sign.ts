import { desc, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { consentHash } from '@/lib/agreement/signing/consent'
import { isFresh } from '@/lib/agreement/signing/fresh'
import type { Agreed } from '@/lib/agreement/signing/page'
import { type Signature, signatureSchema } from '@/lib/agreement/signing/signature'
import type { Stroke } from '@/lib/agreement/signing/stroke'
import { type Tx, write } from '../../open'
import { enqueue } from '../../outbox/enqueue'
import { contactsOf, designers } from '../../proposals/recipients'
import { append } from '../../record/append'
import { isFirst } from '../../record/once'
import { seal } from '../../record/seal'
import { agreement, agreementSignature, event } from '../../schema'
import { type Proof, proofIn } from '../../sign-in/proof'
import type { Stamp } from '../../stamp'
import type { Denied } from '../../viewer'
import { billedTwiceProblems } from '../billed-twice'
import { planVisitsIn } from '../plan-visits'
import { consentOf, openingsOf } from './evidence'
import { type Answering, type Refused, type Step, stepTo } from './step'

export type Signing = Answering & {
	readonly name: string
	readonly stroke: Stroke | null
	/** What the cookie of the session holds in which it is signed. */
	readonly token: string
	readonly sender: string
	readonly browser: string
}
export type Signed = { readonly ok: true; readonly number: number } | Refused | Denied

type Shown = { readonly proof: Proof; readonly consent: Agreed & { readonly words: NonNullable<Agreed['words']> } }

/** What has to be shown before a signature is taken: the consent of the same person, and a proof that is fresh. */
function shownBefore(tx: Tx, { token, document }: Signing, { person }: Step, { at }: Stamp): Refused | Shown {
	const consent = consentOf(tx, document, person)
	if (consent === undefined) return { ok: false, why: 'not agreed to' }
	if (consent.words === undefined) return { ok: false, why: 'erased' }
	const proof = proofIn(tx, token, person)
	if (proof === undefined || !isFresh(proof.at, at)) return { ok: false, why: 'proof is old' }
	return { proof, consent: { ...consent, words: consent.words } }
}

function signatureOf(tx: Tx, signing: Signing, { found, person }: Step, { proof, consent }: Shown, stamp: Stamp) {
	const { name: typedName, stroke, sender, browser, document } = signing
	const { id, clientId: client } = found.row
	return signatureSchema.parse({
		...{ v: 1, agreement: id, document, is: 'on a screen', client, person, typedName, stroke, sender, browser },
		proven: proof,
		opened: openingsOf(tx, document, person),
		consent: { version: consent.version, hash: consentHash(consent.words), at: consent.at },
		intent: consent.words.intends,
		signedAt: stamp.at,
	})
}

/** Signature, state, line of the record and mails: all of it, or nothing. */
function keep(tx: Tx, viewer: Viewer, { found, to, document, person }: Step, signature: Signature, stamp: Stamp): void {
	const { id, clientId: client, number } = found.row
	const words = seal(tx, stamp, client, signature)
	tx.insert(agreementSignature)
		.values({ id: stamp.id<'signature'>(), document: to.issued, side: 'client', words, by: person, at: stamp.at })
		.run()
	tx.update(agreement)
		.set({ state: to.to, inForce: to.inForce, holdsUntil: document.to, answeredAt: stamp.at })
		.where(eq(agreement.id, id))
		.run()
	append(tx, stamp, viewer, {
		act: 'agreement signed',
		object: `agreement ${id}`,
		client,
		facts: { number, document: to.issued },
		sealed: words,
	})
	const [head] = tx.select({ seq: event.seq, head: event.hash }).from(event).orderBy(desc(event.seq)).limit(1).all()
	const facts = { agreement: id, number, ...head }
	for (const each of [...contactsOf(tx, client, { whoMayApprove: true }), ...designers(tx)])
		enqueue(tx, stamp, { message: 'agreement signed', person: each, facts })
}

/**
 * Signs exactly the document that was read and stands. Of two at the same moment one wins; whatever is missing before
 * it leaves nothing half signed.
 */
export async function signAgreement(viewer: Viewer, signing: Signing, stamp: Stamp): Promise<Signed> {
	return write((tx): Signed => {
		const step = stepTo(tx, viewer, signing, 'sign', stamp)
		if (!step.ok) return step
		const shown = shownBefore(tx, signing, step, stamp)
		if ('ok' in shown) return shown
		if (billedTwiceProblems(tx, step.found, step.document).length > 0) return { ok: false, why: 'billed twice' }
		if (!isFirst(tx, stamp, viewer, signing.once)) return { ok: false, why: 'sent before' }
		keep(tx, viewer, step, signatureOf(tx, signing, step, shown, stamp), stamp)
		planVisitsIn(tx, stamp, viewer, { client: step.found.row.clientId, seasons: step.document.seasons })
		return { ok: true, number: step.found.row.number }
	})
}
