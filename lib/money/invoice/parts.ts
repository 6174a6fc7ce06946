import { z } from 'zod'
import { type Cents, sum } from '../../units/cents'
import { centsSchema } from '../../units/schema'
import { isCreditNumber, isInvoiceNumber } from './number'

export const invoiceNumberSchema = z.string().refine(isInvoiceNumber, 'is no number of an invoice')
export const creditNumberSchema = z.string().refine(isCreditNumber, 'is no number of a credit note')

/** `cents` is that of the whole line. */
const line = z.strictObject({ words: z.string().min(1), count: z.int().min(1), cents: centsSchema })
const tax = z.strictObject({ milliPercent: z.int().min(0), baseCents: centsSchema, cents: centsSchema })

/** What an invoice and a credit note say in the same way, as frozen. */
export const commonParts = {
	v: z.literal(1),
	currency: z.string(),
	from: z.string().min(1),
	/** Name, and below it the address. */
	to: z.strictObject({ name: z.string().min(1), address: z.string() }),
	lines: z.array(line).min(1),
	tax: z.array(tax),
	totalCents: centsSchema,
}

export type DocumentLine = z.infer<typeof line>

type Summed = Pick<z.infer<z.ZodObject<typeof commonParts>>, 'lines' | 'tax' | 'totalCents'>

export const netOf = ({ lines }: Pick<Summed, 'lines'>): Cents => sum(lines.map(({ cents }) => cents))

/** Lines and tax make the total, which is above zero, and no tax stands twice. */
export function addsUp({ lines, tax: taxes, totalCents }: Summed): boolean {
	const rates = new Set(taxes.map(({ milliPercent }) => milliPercent))
	const all = sum([netOf({ lines }), ...taxes.map(({ cents }) => cents)])
	return all === totalCents && totalCents > 0 && rates.size === taxes.length
}
