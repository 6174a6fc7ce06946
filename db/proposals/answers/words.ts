import { z } from 'zod'

const noteSchema = z.strictObject({ about: z.string(), words: z.string() })

/** What is sealed with an answer. */
export const answerWords = z.strictObject({
	name: z.string(),
	address: z.string(),
	browser: z.string(),
	purchaseOrder: z.string(),
	notes: z.array(noteSchema),
	/** Who said so, where somebody else took it down. */
	said: z.string().optional(),
})
export type AnswerWords = z.infer<typeof answerWords>
