import { z } from 'zod'
import { words } from '../../proposal/draft'

/** Outlives a change of title; what changed is told by it. */
export const clauseKeySchema = z.string().regex(/^[a-z][a-z0-9-]{0,29}$/, 'is not a key')

const clauseSchema = z.strictObject({
	key: clauseKeySchema,
	title: words(80),
	/** Paragraphs with blanks in braces. */
	text: words(4000),
	isOn: z.boolean(),
	order: z.int().min(0).max(9999),
})
export type Clause = z.infer<typeof clauseSchema>

/** What agreements are made from: the studio's own clauses, numbered anew by each edit. */
export const templateSchema = z.strictObject({
	v: z.literal(1),
	version: z.int().min(1),
	clauses: z.array(clauseSchema).min(1).max(60),
})
export type Template = z.infer<typeof templateSchema>

/** The clauses that are in use, as they follow each other. */
export const inUse = ({ clauses }: Template): Clause[] =>
	clauses.filter(({ isOn }) => isOn).toSorted((a, b) => a.order - b.order)

/** Stands beside the template and wherever an agreement is issued; a client's agreement does not carry it. */
export const lawyerLine =
	'These words are a start in plain English and no legal advice. Have them read by your own lawyer before you issue them, and again when you have changed them.'
