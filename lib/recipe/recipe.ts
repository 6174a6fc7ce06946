import { z } from 'zod'
import { idSchema } from '../units/schema'
import { holdingSchema, roleSchema } from './material'

const count = z.number().min(0).max(9999)

/** How a line grows from the reference container (round, 45.72 cm across, seen all round) to another. Counts are of the reference. */
export const growsSchema = z.discriminatedUnion('way', [
	z.strictObject({ way: z.literal('fixed'), count }),
	z.strictObject({ way: z.literal('stems'), count }),
	z.strictObject({ way: z.literal('greens'), count }),
	z.strictObject({ way: z.literal('rim'), count }),
	/** Per viewed face. */
	z.strictObject({ way: z.literal('faces'), count }),
	/** Live plants: the share of the opening that is theirs, 0 to 1. */
	z.strictObject({ way: z.literal('spacing'), share: z.number().min(0).max(1) }),
	/** So many for each unit of another line's material, or of the reference's opening where it holds none. */
	z.strictObject({ way: z.literal('held'), count, holds: idSchema<'material'>().nullable() }),
])
export type Grows = z.infer<typeof growsSchema>
export const ways = [
	'fixed',
	'stems',
	'greens',
	'rim',
	'faces',
	'spacing',
	'held',
] as const satisfies readonly Grows['way'][]

export const recipeLineSchema = z.strictObject({
	material: idSchema<'material'>(),
	role: roleSchema,
	holding: holdingSchema,
	grows: growsSchema,
})
export type RecipeLine = z.infer<typeof recipeLineSchema>
