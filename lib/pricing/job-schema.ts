import { z } from 'zod'
import { holdings, kinds, pieces, units } from '../recipe/material'
import { quarters } from '../season/season'
import { centsSchema, idSchema } from '../units/schema'
import type { Job } from './job'

const amount = z.number().min(0)
const line = z.strictObject({
	name: z.string(),
	unit: z.enum(units),
	kind: z.enum(kinds),
	piece: z.enum(pieces),
	piecesPerUnit: amount,
	count: amount,
	holding: z.enum(holdings),
	pack: z.strictObject({ size: amount, cents: centsSchema, freightPercent: amount }),
	usesBefore: z.int(),
	onlyHere: z.boolean(),
})
const place = idSchema<'place'>()
const container = idSchema<'container'>()

/** What a price was made of, without the rates, which are kept by their version. */
export type JobInputs = Omit<Job, 'rates'>

/** The inputs of a costing as they are frozen with a revision. */
export const jobInputsSchema: z.ZodType<JobInputs> = z.strictObject({
	currency: z.string(),
	ratesVersion: z.int(),
	quarter: z.enum(quarters),
	payer: z.strictObject({
		kind: z.enum(['business', 'household']),
		netDays: z.union([z.literal(15), z.literal(30)]),
		exemptCertificate: z.string().nullable(),
	}),
	agreement: z.discriminatedUnion('is', [
		z.strictObject({ is: z.literal('none') }),
		z.strictObject({ is: z.literal('discount'), percent: amount }),
		z.strictObject({ is: z.literal('fixed'), cents: centsSchema, containers: z.array(container) }),
	]),
	supplementCents: centsSchema,
	design: z.enum(['new', 'repeat']),
	visits: z.array(
		z.strictObject({
			place,
			name: z.string(),
			taxMilliPercent: z.int(),
			driveMinutes: amount,
			zoneCents: centsSchema.nullable(),
			takeDown: z.boolean(),
		}),
	),
	containers: z.array(
		z.strictObject({
			id: container,
			place,
			name: z.string(),
			openingCm2: amount,
			soilL: amount,
			isNew: z.boolean(),
			lines: z.array(line),
		}),
	),
	extras: z.array(z.strictObject({ key: z.string(), place, name: z.string(), minutes: amount, lines: z.array(line) })),
})
