import { z } from 'zod'
import { words } from '../proposal/draft'
import { daySchema } from '../units/schema'
import { planSchema } from './instalment/plan'
import { agreedSeasonSchema } from './season'
import { clauseKeySchema } from './template/template'

/** What is agreed beside seasons and money; null or empty where it is still to be filled. */
const saidSchema = z.strictObject({
	waters: z.enum(['client', 'studio']).nullable(),
	sold: words(300),
	lent: words(300),
	lightsDownBy: daySchema.nullable(),
	noticeDays: z.int().min(0).max(365).nullable(),
	law: words(120),
})

/** What the studio fills in for one client before an agreement is issued, as it is kept while drafting. */
export const termsSchema = z.strictObject({
	v: z.literal(1),
	from: daySchema.nullable(),
	to: daySchema.nullable(),
	seasons: z.array(agreedSeasonSchema).max(12),
	/** Null where every season is quoted. */
	plan: planSchema.nullable(),
	said: saidSchema,
	/** Keys of the template's clauses that this client's agreement goes without: lights, where there are none. */
	without: z.array(clauseKeySchema).max(60),
})
export type Terms = z.infer<typeof termsSchema>

/** Thirty days of notice: common practice, no published source. The law is the studio's to name. */
export const emptyTerms: Terms = {
	v: 1,
	from: null,
	to: null,
	seasons: [],
	plan: null,
	said: {
		waters: null,
		sold: 'plants, cut greens and branches',
		lent: 'ornaments and lights that a proposal calls lent',
		lightsDownBy: null,
		noticeDays: 30,
		law: '',
	},
	without: [],
}
