import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { wordsIn } from '@/lib/pricing/cost/words'
import { type Made, makeRevision } from '@/lib/proposal/make'
import type { Problem } from '@/lib/proposal/problem'
import { decide, type Refusal } from '@/lib/proposal/state'
import { type Hash, hashOf } from '@/lib/record/hash'
import { groupOf } from '@/lib/season/group'
import { standing } from '@/lib/season/standing'
import type { Id, PersonId, ProposalId, SeasonId } from '@/lib/units/id'
import { type Tx, write } from '../open'
import { enqueue } from '../outbox/enqueue'
import { append } from '../record/append'
import { isFirst } from '../record/once'
import { seal } from '../record/seal'
import { proposal, revision } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, hidden } from '../viewer'
import { draftOf } from './documents'
import { factsFor } from './facts'
import { type Found, findProposal } from './find'
import { contactsOf } from './recipients'

export type Publishing = {
	readonly proposal: ProposalId
	readonly version: number
	readonly once: Id<'once'>
	/** As one of the drafts of this season: only while it is one that waits for the studio. */
	readonly within?: SeasonId
}

export type Published =
	| { readonly ok: true; readonly number: number; readonly hash: Hash }
	| { readonly ok: false; readonly why: Refusal | 'saved elsewhere' | 'sent before' | 'not waiting for us' }
	| { readonly ok: false; readonly why: 'not ready'; readonly problems: readonly Problem[] }
	| Denied

/** Seals both sides of a revision and keeps it under one hash, which an answer has to name. */
function keepRevision(
	tx: Tx,
	stamp: Stamp,
	{ row }: Found,
	{ offer, inputs }: Made,
	by: PersonId,
	ratesVersion: number,
): Hash {
	const offerHash = seal(tx, stamp, row.clientId, offer)
	const costingHash = seal(tx, stamp, row.clientId, inputs)
	const { number, answerBy } = offer
	const hash = hashOf({
		v: 1,
		proposal: row.id,
		number,
		offer: offerHash,
		costing: costingHash,
		rates: ratesVersion,
		answerBy,
	})
	const kept = {
		id: stamp.id<'revision'>(),
		proposalId: row.id,
		number,
		hash,
		offerHash,
		costingHash,
		ratesVersion,
		answerBy,
	}
	tx.insert(revision)
		.values({ ...kept, publishedAt: stamp.at, publishedBy: by })
		.run()
	return hash
}

function publishIn(
	tx: Tx,
	viewer: Viewer,
	{ proposal: id, version, once, within }: Publishing,
	stamp: Stamp,
): Published {
	const found = findProposal(tx, viewer, 'publish', id, stamp)
	if (!found.ok) return found
	if (viewer.is !== 'staff') return hidden
	if (within !== undefined && found.row.seasonId !== within) return hidden
	if (within !== undefined && groupOf(found.state.is) !== 'waiting for us')
		return { ok: false, why: 'not waiting for us' }
	const decision = decide(found.state, { do: 'publish' })
	if (!decision.ok) return decision
	const kept = draftOf(tx, id)
	if (kept.version !== version) return { ok: false, why: 'saved elsewhere' }
	const facts = factsFor(tx, found, viewer.person)
	const words = wordsIn(facts.studio.currency)
	const made = makeRevision(kept.draft, facts, words.money, found.row.revisionNumber + 1, found.today)
	if (!made.ok) return { ok: false, why: 'not ready', problems: made.problems }
	if (!isFirst(tx, stamp, viewer, once)) return { ok: false, why: 'sent before' }
	const { number, answerBy } = made.offer
	const hash = keepRevision(tx, stamp, found, made, viewer.person, facts.ratesVersion)
	const ledger = standing(made.offer, made.inputs, facts.rates, words)
	const fresh = {
		seenAt: null,
		remindedAt: null,
		answeredAt: null,
		lapseNotedAt: null,
		undeliveredAt: null,
		remainsCents: null,
		publishedAt: stamp.at,
		answerBy,
		cardKey: found.row.cardKey ?? Buffer.from(stamp.salt()).toString('hex'),
	}
	tx.update(proposal)
		.set({ ...ledger, ...fresh, state: decision.to, revisionNumber: number, revisionHash: hash })
		.where(eq(proposal.id, id))
		.run()
	const { clientId: client } = found.row
	append(tx, stamp, viewer, {
		act: 'proposal published',
		object: `proposal ${id}`,
		client,
		facts: { number, revision: hash },
	})
	for (const person of contactsOf(tx, client))
		enqueue(tx, stamp, { message: 'proposal published', person, facts: { proposal: id, number } })
	return { ok: true, number, hash }
}

/** Freezes the draft as the next revision and tells the client's contacts. */
export async function publish(viewer: Viewer, publishing: Publishing, stamp: Stamp): Promise<Published> {
	return write((tx) => publishIn(tx, viewer, publishing, stamp))
}
