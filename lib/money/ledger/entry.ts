import { z } from 'zod'
import type { Id } from '../../units/id'
import { centsSchema, daySchema as day, idSchema } from '../../units/schema'
import { creditNumberSchema, invoiceNumberSchema } from '../invoice/parts'

/** How money came or went; what it is to be found by goes into `reference`. */
export const means = ['check', 'bank transfer', 'card', 'cash', 'other'] as const
export type Means = (typeof means)[number]

export type EntryId = Id<'entry'>

const id = idSchema<'entry'>()
/** Always above zero: what an entry is says in which direction it goes. */
const cents = centsSchema.refine((amount) => amount > 0, 'is not above zero')
const kept = { id, on: day }
const paid = { means: z.enum(means), reference: z.string(), cents }

/** A line of a client's account; none is ever altered or taken away. */
export const entrySchema = z.discriminatedUnion('is', [
	z
		.strictObject({ is: z.literal('invoice'), ...kept, number: invoiceNumberSchema, dueOn: day, cents })
		.refine(({ on, dueOn }) => on <= dueOn, 'is due before it was written'),
	z.strictObject({
		is: z.literal('credit note'),
		...kept,
		number: creditNumberSchema,
		invoice: invoiceNumberSchema,
		cents,
	}),
	/** `invoice` is the one that the client named; null where none was. */
	z.strictObject({ is: z.literal('payment'), ...kept, ...paid, invoice: invoiceNumberSchema.nullable() }),
	z.strictObject({ is: z.literal('refund'), ...kept, ...paid }),
	z.strictObject({
		is: z.literal('write-off'),
		...kept,
		invoice: invoiceNumberSchema,
		reason: z.string().min(1),
		cents,
	}),
	/** Undoes one entry that was written by mistake, as if it had never been. */
	z.strictObject({ is: z.literal('counter-entry'), ...kept, of: id, reason: z.string().min(1) }),
])

export type Entry = z.infer<typeof entrySchema>
/** The entries of one client in the order in which they were written. */
export type Ledger = readonly Entry[]
export type CounterEntry = Extract<Entry, { is: 'counter-entry' }>
/** An entry that moves money by itself. */
export type Moving = Exclude<Entry, CounterEntry>
