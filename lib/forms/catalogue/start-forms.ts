import { z } from 'zod'
import { idField, onceField } from '../fields'

/** The most clients that a collection is applied to at once. */
export const mostClients = 100

const counts = { '1': 1, '2': 2, '3': 3 } as const
const options = z.enum(['1', '2', '3'], 'Choose one, two or three.').transform((count) => counts[count])
const whose = { once: onceField, season: idField<'season'>() }

export const applyForm = z.strictObject({
	...whose,
	options,
	client: z
		.array(idField<'client'>())
		.min(1, 'Tick at least one client.')
		.max(mostClients, 'A hundred clients at once are the most.'),
})

const from = z.discriminatedUnion(
	'from',
	[
		z
			.strictObject({ from: z.literal('collection'), which: options })
			.transform(({ which }) => ({ is: 'collection' as const, options: which })),
		z
			.strictObject({ from: z.enum(['earlier', 'another']), which: idField<'proposal'>() })
			.transform(({ from: is, which }) => ({ is, proposal: which })),
		z
			.strictObject({ from: z.literal('recipe'), which: idField<'recipe'>() })
			.transform(({ which }) => ({ is: 'recipe' as const, recipe: which })),
	],
	'Choose what it starts from.',
)

const begun = z.strictObject({ ...whose, client: idField<'client'>(), from: z.string(), which: z.string() })

/** What a draft is started from: `which` is a proposal, a recipe, or of a collection how many designs. */
export const startForm = begun.transform(({ once, season, client, ...rest }, context) => {
	const read = from.safeParse(rest)
	if (read.success) return { once, season, client, from: read.data }
	for (const { path, message } of read.error.issues) context.addIssue({ code: 'custom', path: [...path], message })
	return z.NEVER
})
