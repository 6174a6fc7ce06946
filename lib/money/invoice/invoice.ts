import { z } from 'zod'
import { addDays, type Day } from '../../units/day'
import { daySchema as day } from '../../units/schema'
import { addsUp, commonParts, invoiceNumberSchema } from './parts'

/** Net days are counted from the day on which the amount came to be owed, which may lie before the invoice. */
const terms = z.strictObject({ from: day, netDays: z.int().min(0).max(366) })

/**
 * The day by which an invoice of `on` is to be paid: net days are whole calendar days after the day that they are
 * counted from, weekends and holidays in them (common practice, no published source); never before the invoice itself.
 */
export function dueDay(on: Day, { from, netDays }: z.infer<typeof terms>): Day {
	const due = addDays(from, netDays)
	return due < on ? on : due
}

/** An invoice as it is frozen: strict, so that nothing of the studio's own can ride along. */
export const invoiceSchema = z
	.strictObject({
		...commonParts,
		is: z.literal('invoice'),
		number: invoiceNumberSchema,
		on: day,
		terms,
		dueOn: day,
		/** What it is for, in a few words: "Winter 2026–27". */
		about: z.string().min(1),
		/** The client's own; empty where none was given. */
		purchaseOrder: z.string(),
		/** The number of the certificate of a client who is exempt from sales tax. */
		exemptCertificate: z.string().min(1).nullable(),
		/** Where and how to pay, in the studio's own words. */
		pay: z.string(),
		/** Which bill it asks for, so that nothing asks for it again; null of one that was written by hand. */
		bill: z.string().min(1).nullable(),
	})
	.refine(addsUp, 'does not add up')
	.refine(({ on, terms: of, dueOn }) => dueOn === dueDay(on, of), 'is not due by its terms')
	.refine(({ number, on }) => number.startsWith(on.slice(0, 4)), 'has the number of another year')
	.refine(({ exemptCertificate, tax }) => exemptCertificate === null || tax.length === 0, 'is exempt and taxed')

export type Invoice = z.infer<typeof invoiceSchema>
