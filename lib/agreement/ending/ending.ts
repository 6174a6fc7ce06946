import { z } from 'zod'
import { words } from '../../proposal/draft'
import { type Day, daysBetween } from '../../units/day'
import { daySchema } from '../../units/schema'
import type { AgreementDocument } from '../document/document'

/** Who ends an agreement, as of which day, and why. `saidOn` is the day on which the other side was told. */
export const endingSchema = z.strictObject({
	on: daySchema,
	saidOn: daySchema,
	by: z.enum(['client', 'studio']),
	reason: words(300).refine((text) => text.trim() !== '', 'is left empty'),
})
export type Ending = z.infer<typeof endingSchema>

/** Why it cannot end on that day, by name. */
export type EndingRefusal = 'before it begins' | 'over by then' | 'said in days to come'

/** null when it can. An ending may lie in the past: somebody who moved out says so later. */
export function endingRefusal(
	{ on, saidOn }: Pick<Ending, 'on' | 'saidOn'>,
	{ from, to }: Pick<AgreementDocument, 'from' | 'to'>,
	today: Day,
): EndingRefusal | null {
	if (on < from) return 'before it begins'
	if (on >= to) return 'over by then'
	return saidOn > today ? 'said in days to come' : null
}

/** By how many days it ends sooner than the notice that was agreed; 0 where none is missing. */
export const noticeMissing = ({ on, saidOn }: Pick<Ending, 'on' | 'saidOn'>, noticeDays: number): number =>
	Math.max(0, noticeDays - daysBetween(saidOn, on))
