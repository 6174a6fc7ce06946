import { and, eq, sql } from 'drizzle-orm'
import { z } from 'zod'
import { jobInputsSchema } from '@/lib/pricing/job-schema'
import { type Draft, draftSchema } from '@/lib/proposal/draft'
import { type Offer, offerSchema } from '@/lib/proposal/offer/offer'
import type { Hash } from '@/lib/record/hash'
import type { Inputs } from '@/lib/season/standing'
import type { ProposalId } from '@/lib/units/id'
import { prepared, type Reading } from '../open'
import { sealedBody, unseal } from '../record/seal'
import { draft, revision } from '../schema'

const inputsSchema: z.ZodType<Inputs> = z.array(z.strictObject({ key: z.string(), job: jobInputsSchema }))

/** @throws when the proposal has no draft: it gets one when it begins */
export function draftOf(db: Reading, id: ProposalId): { version: number; draft: Draft } {
	const [row] = db.select().from(draft).where(eq(draft.proposalId, id)).all()
	if (row === undefined) throw new Error(`draftOf: ${id} has no draft`)
	return { version: row.version, draft: draftSchema.parse(JSON.parse(row.document)) }
}

export type Revision = typeof revision.$inferSelect

const revisionNumbered = prepared((db) =>
	db
		.select()
		.from(revision)
		.where(and(eq(revision.proposalId, sql.placeholder('id')), eq(revision.number, sql.placeholder('number'))))
		.prepare(),
)

export function revisionOf(db: Reading, id: ProposalId, number: number): Revision | undefined {
	return revisionNumbered(db).all({ id, number })[0]
}

/** As many as a season's busy hours ask for again and again. */
const mostKnown = 200
const known = new Map<Hash, Offer>()

/** What is sealed never changes, so it is read and checked once; the oldest falls out. */
function knowing(hash: Hash, body: string): Offer {
	const offer = known.get(hash) ?? offerSchema.parse(JSON.parse(body))
	known.delete(hash)
	known.set(hash, offer)
	const [oldest] = known.keys()
	if (known.size > mostKnown && oldest !== undefined) known.delete(oldest)
	return offer
}

/** What a revision offered; undefined once the client's words are erased. */
export function offerIn(db: Reading, { offerHash }: { offerHash: Hash }): Offer | undefined {
	const body = sealedBody(db, offerHash)
	if (body !== undefined) return knowing(offerHash, body)
	known.delete(offerHash)
	return undefined
}

/** What the costing of a revision follows from; undefined once the client's words are erased. */
export function inputsIn(db: Reading, { costingHash }: { costingHash: Hash }): Inputs | undefined {
	const words = unseal(db, costingHash)
	return words === undefined ? undefined : inputsSchema.parse(words)
}
