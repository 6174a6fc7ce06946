import { z } from 'zod'
import { extraSchema, keySchema, words } from '../../proposal/draft'
import { hexSchema, idSchema } from '../../units/schema'

export const mostDesigns = 8
export const mostColours = 8
export const mostExtras = 10

const recipeOrNone = idSchema<'recipe'>().nullable()

const designSchema = z.strictObject({
	key: keySchema,
	name: words(60),
	palette: z.array(z.strictObject({ name: words(40), hex: hexSchema })).max(mostColours),
	/** From the library, by how a container is planted; where a box or a bowl has none, it takes the pot's. */
	recipes: z.strictObject({ pot: recipeOrNone, box: recipeOrNone, bowl: recipeOrNone }),
})

/** The house designs of a season; it may be far from ready (see `problems`). */
export const collectionSchema = z.strictObject({
	v: z.literal(1),
	/** What each proposal made from it is called. */
	title: words(120),
	letter: words(4000),
	designs: z.array(designSchema).max(mostDesigns),
	/** Offered at each place that has a container. */
	extras: z.array(extraSchema.omit({ place: true })).max(mostExtras),
})

export type Collection = z.infer<typeof collectionSchema>
export type Design = Collection['designs'][number]
export type CollectionExtra = Collection['extras'][number]

export const emptyCollection: Collection = { v: 1, title: '', letter: '', designs: [], extras: [] }
