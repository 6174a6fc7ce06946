import { z } from 'zod'
import { mostCents } from '../proposal/draft'
import { quarters } from '../season/season'
import { type Cents, sum } from '../units/cents'
import { centsSchema, idSchema } from '../units/schema'
import { visitKinds } from '../visit/visit'

export const seasonSchema = z.strictObject({ quarter: z.enum(quarters), year: z.int().min(2000).max(2400) })

const visit = z.strictObject({ kind: z.enum(visitKinds), count: z.int().min(1).max(60) })
const differ = (of: readonly string[]) => new Set(of).size === of.length

/** A season under an agreement: what it costs, for which containers, with how many visits of each kind. */
export const agreedSeasonSchema = seasonSchema.extend({
	/** Quoted: priced by its own proposal each year, and billed by that. */
	price: z.discriminatedUnion('is', [
		z.strictObject({ is: z.literal('fixed'), cents: z.int().min(0).max(mostCents).pipe(centsSchema) }),
		z.strictObject({ is: z.literal('quoted') }),
	]),
	containers: z.array(idSchema<'container'>()).max(60).refine(differ, 'names a container twice'),
	visits: z
		.array(visit)
		.max(visitKinds.length)
		.refine((all) => differ(all.map(({ kind }) => kind)), 'names a kind of visit twice'),
})
export type AgreedSeason = z.infer<typeof agreedSeasonSchema>

/** What the agreement asks for in all; a quoted season adds nothing. */
export const fixedCents = (seasons: readonly Pick<AgreedSeason, 'price'>[]): Cents =>
	sum(seasons.flatMap(({ price }) => (price.is === 'fixed' ? [price.cents] : [])))
