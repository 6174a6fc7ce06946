import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { documentChanges } from '@/lib/agreement/document/changes'
import { type AgreementDocument, documentHash } from '@/lib/agreement/document/document'
import { makeDocument } from '@/lib/agreement/document/make'
import { type Signature, signatureSchema } from '@/lib/agreement/signing/signature'
import { decide, type Refusal } from '@/lib/agreement/state'
import type { Problem } from '@/lib/proposal/problem'
import type { Hash } from '@/lib/record/hash'
import type { Day } from '@/lib/units/day'
import type { Id, PersonId } from '@/lib/units/id'
import { type Tx, write } from '../open'
import { enqueue } from '../outbox/enqueue'
import { contactsOf } from '../proposals/recipients'
import { append } from '../record/append'
import { isFirst } from '../record/once'
import { seal } from '../record/seal'
import { agreement, agreementDocument, agreementSignature } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, hidden } from '../viewer'
import { billedTwiceProblems } from './billed-twice'
import { documentIn } from './documents'
import { termsOf } from './draft'
import { agreementFacts } from './facts'
import { type FoundAgreement, findAgreement } from './find'
import { latestTemplate } from './template'

export type Issuing = {
	readonly agreement: Id<'agreement'>
	/** Of the terms that were read. */
	readonly version: number
	/** Until when it is to be signed; asked for again three times before. */
	readonly signBy: Day
	readonly once: Id<'once'>
}
export type IssuedAs =
	| { readonly ok: true; readonly number: number; readonly hash: Hash }
	| { readonly ok: false; readonly why: Refusal | 'saved elsewhere' | 'sent before' }
	| { readonly ok: false; readonly why: 'not ready'; readonly problems: readonly Problem[] }
	| Denied

/** Whoever reads the document of before has it beside this one; an erased client has none. */
function isLikeBefore(tx: Tx, { row }: FoundAgreement, document: AgreementDocument): boolean {
	const before = row.issued === null ? undefined : documentIn(tx, row.issued)
	return before !== undefined && documentChanges(before, document).length === 0
}

const dayProblems = (signBy: Day, today: Day): Problem[] =>
	signBy < today ? [{ at: 'signBy', says: 'The day to sign by is over: choose a later one.' }] : []

const approverProblems = (tx: Tx, { row }: FoundAgreement): Problem[] =>
	contactsOf(tx, row.clientId, { whoMayApprove: true }).length > 0
		? []
		: [{ at: 'client', says: 'Nobody at this client may sign yet: invite a contact first.' }]

/** Seals the document and the studio's own signature to it. */
function keepDocument(
	tx: Tx,
	stamp: Stamp,
	{ row }: FoundAgreement,
	document: AgreementDocument,
	by: PersonId,
): { readonly hash: Hash; readonly signed: Hash } {
	const { number, supersedes, templateVersion, from, to, totalCents } = document
	const hash = seal(tx, stamp, row.clientId, document)
	const at = stamp.at
	tx.insert(agreementDocument)
		.values({
			...{ hash, agreementId: row.id, number, supersedes, templateVersion, from, to, totalCents },
			...{ issuedAt: at, issuedBy: by },
		})
		.run()
	const given: Signature = signatureSchema.parse({
		...{ v: 1, agreement: row.id, document: hash, is: 'by the studio', person: by },
		...{ name: document.studio.signedBy, signedAt: at },
	})
	const signed = seal(tx, stamp, row.clientId, given)
	tx.insert(agreementSignature)
		.values({ id: stamp.id<'signature'>(), document: hash, side: 'studio', words: signed, by, at })
		.run()
	return { hash, signed }
}

/** Issues what was agreed, inside what else is done: signed by the studio, and put before who may sign. */
export function issueIn(
	tx: Tx,
	viewer: Viewer,
	{ agreement: id, version, signBy, once }: Issuing,
	stamp: Stamp,
): IssuedAs {
	const found = findAgreement(tx, viewer, 'change agreements', id, stamp)
	if (!found.ok) return found
	if (viewer.is !== 'staff') return hidden
	const { row, today } = found
	const kept = termsOf(tx, id)
	if (kept.version !== version) return { ok: false, why: 'saved elsewhere' }
	const facts = agreementFacts(tx, found, viewer.person)
	const issue = { agreement: id, number: row.number + 1, supersedes: row.issued }
	const made = makeDocument(kept.terms, facts, latestTemplate(tx), issue)
	const unready = made.ok ? billedTwiceProblems(tx, found, made.document) : made.problems
	const problems = [...unready, ...dayProblems(signBy, today), ...approverProblems(tx, found)]
	if (!made.ok || problems.length > 0) return { ok: false, why: 'not ready', problems }
	const { document } = made
	if (isLikeBefore(tx, found, document)) return { ok: false, why: 'nothing is different' }
	const decision = decide(found.state, { do: 'issue', document: documentHash(document), supersedes: row.issued })
	if (!decision.ok) return decision
	if (!isFirst(tx, stamp, viewer, once)) return { ok: false, why: 'sent before' }
	const { hash, signed } = keepDocument(tx, stamp, found, document, viewer.person)
	const { number, from, to, totalCents } = document
	tx.update(agreement)
		.set({
			...{ state: decision.to, number, issued: hash, from, to, totalCents, signBy, issuedAt: stamp.at },
			...{ seenAt: null, remindedAt: null, answeredAt: null, undeliveredAt: null },
		})
		.where(eq(agreement.id, id))
		.run()
	append(tx, stamp, viewer, {
		act: 'agreement issued',
		object: `agreement ${id}`,
		client: row.clientId,
		facts: { number, document: hash },
		sealed: signed,
	})
	for (const person of contactsOf(tx, row.clientId, { whoMayApprove: true }))
		enqueue(tx, stamp, { message: 'agreement issued', person, facts: { agreement: id, number } })
	return { ok: true, number, hash }
}

export async function issueAgreement(viewer: Viewer, issuing: Issuing, stamp: Stamp): Promise<IssuedAs> {
	return write((tx) => issueIn(tx, viewer, issuing, stamp))
}
