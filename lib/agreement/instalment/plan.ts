import { z } from 'zod'
import { daySchema } from '../../units/schema'
import { visitKinds } from '../../visit/visit'
import { seasonSchema } from '../season'

/** When an instalment falls due: on a day, at the client's approval or whole months after it, or with a visit. */
export const dueSchema = z.discriminatedUnion('is', [
	z.strictObject({ is: z.literal('on'), day: daySchema }),
	z.strictObject({
		is: z.literal('on approval'),
		monthsLater: z
			.int()
			.min(0)
			.max(35 * 12),
	}),
	z.strictObject({
		is: z.literal('at visit'),
		season: seasonSchema,
		visit: z.enum(visitKinds),
		number: z.int().min(1).max(60),
	}),
])
export type Due = z.infer<typeof dueSchema>

/** The first of the month is the one on or after `from`. */
const startSchema = z.discriminatedUnion('is', [
	z.strictObject({ is: z.literal('on'), day: daySchema }),
	z.strictObject({ is: z.literal('first of the month'), from: daySchema }),
	z.strictObject({ is: z.literal('on approval') }),
])
export type Start = z.infer<typeof startSchema>

/** How a year's fixed price is split: with each visit, every so many months (1 monthly, 3 quarterly), or on dates of its own. */
export const planSchema = z.discriminatedUnion('is', [
	z.strictObject({ is: z.literal('per visit') }),
	z.strictObject({
		is: z.literal('every months'),
		months: z.int().min(1).max(12),
		start: startSchema,
		count: z.int().min(1).max(36),
	}),
	z.strictObject({
		is: z.literal('own dates'),
		/** Weights are shares of any measure: per cent, or the amounts themselves. */
		parts: z
			.array(z.strictObject({ weight: z.int().min(1).max(10_000_000), due: dueSchema }))
			.min(1)
			.max(36),
	}),
])
export type Plan = z.infer<typeof planSchema>
