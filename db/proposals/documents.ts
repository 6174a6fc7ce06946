import { and, eq } from 'drizzle-orm'
import { z } from 'zod'
import { jobInputsSchema } from '@/lib/pricing/job-schema'
import { type Draft, draftSchema } from '@/lib/proposal/draft'
import { type Offer, offerSchema } from '@/lib/proposal/offer/offer'
import type { Hash } from '@/lib/record/hash'
import type { Inputs } from '@/lib/season/standing'
import type { ProposalId } from '@/lib/units/id'
import type { Reading } from '../open'
import { unseal } from '../record/seal'
import { draft, revision } from '../schema'

const inputsSchema: z.ZodType<Inputs> = z.array(z.strictObject({ key: z.string(), job: jobInputsSchema }))

/** @throws when the proposal has no draft: it gets one when it begins */
export function draftOf(db: Reading, id: ProposalId): { version: number; draft: Draft } {
	const [row] = db.select().from(draft).where(eq(draft.proposalId, id)).all()
	if (row === undefined) throw new Error(`draftOf: ${id} has no draft`)
	return { version: row.version, draft: draftSchema.parse(JSON.parse(row.document)) }
}

export type Revision = typeof revision.$inferSelect

export function revisionOf(db: Reading, id: ProposalId, number: number): Revision | undefined {
	return db
		.select()
		.from(revision)
		.where(and(eq(revision.proposalId, id), eq(revision.number, number)))
		.all()[0]
}

/** What a revision offered; undefined once the client's words are erased. */
export function offerIn(db: Reading, { offerHash }: { offerHash: Hash }): Offer | undefined {
	const words = unseal(db, offerHash)
	return words === undefined ? undefined : offerSchema.parse(words)
}

/** What the costing of a revision follows from; undefined once the client's words are erased. */
export function inputsIn(db: Reading, { costingHash }: { costingHash: Hash }): Inputs | undefined {
	const words = unseal(db, costingHash)
	return words === undefined ? undefined : inputsSchema.parse(words)
}
