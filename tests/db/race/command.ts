import { z } from 'zod'
import { hash } from '@/lib/record/hash'
import { moment } from '@/lib/units/day'
import { idSchema } from '@/lib/units/schema'

const common = {
	folder: z.string(),
	/** By the clock of the machine, in milliseconds: when to begin. */
	at: z.number(),
	/** By the clock that is handed in. */
	now: z.string().transform((text) => moment(new Date(text))),
}

export const commandSchema = z.discriminatedUnion('does', [
	z.strictObject({
		does: z.literal('approve'),
		...common,
		person: idSchema<'person'>(),
		proposal: idSchema<'proposal'>(),
		revision: z.string().transform(hash),
		once: idSchema<'once'>(),
	}),
	z.strictObject({ does: z.literal('use the link'), ...common, token: z.string() }),
	z.strictObject({ does: z.literal('lease'), ...common, most: z.int() }),
	z.strictObject({ does: z.literal('bill'), ...common }),
])

export type Command = z.output<typeof commandSchema>
/** As it is told: the same words for both, but for who they are. */
export type Told = Command extends infer Each ? (Each extends Command ? Omit<Each, 'folder' | 'at'> : never) : never
