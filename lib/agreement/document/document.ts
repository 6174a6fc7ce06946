import { z } from 'zod'
import { type CurrencyCode, isCurrency } from '../../format/money'
import { type Hash, hashOf, isHash } from '../../record/hash'
import { sum } from '../../units/cents'
import { centsSchema, daySchema, idSchema } from '../../units/schema'
import { instalmentSchema } from '../instalment/instalments'
import { planSchema } from '../instalment/plan'
import { agreedSeasonSchema, fixedCents } from '../season'

export const hashSchema = z.string().refine((text): text is Hash => isHash(text), 'is not a SHA-256')
const currency = z.string().refine((code): code is CurrencyCode => isCurrency(code), 'is not a currency of the studio')
const place = idSchema<'place'>()

/** What both sides sign: frozen when it is issued, strict, so that nothing of the studio's own can ride along. */
export const documentSchema = z
	.strictObject({
		v: z.literal(1),
		agreement: idSchema<'agreement'>(),
		/** 1 for the first issue; each later one supersedes another, named by its hash. */
		number: z.int().min(1),
		supersedes: hashSchema.nullable(),
		templateVersion: z.int().min(1),
		currency,
		studio: z.strictObject({ name: z.string(), signedBy: z.string() }),
		client: z.strictObject({ id: idSchema<'client'>(), name: z.string() }),
		from: daySchema,
		to: daySchema,
		places: z.array(z.strictObject({ id: place, name: z.string(), address: z.string() })),
		containers: z.array(z.strictObject({ id: idSchema<'container'>(), place, name: z.string(), words: z.string() })),
		seasons: z.array(agreedSeasonSchema).min(1),
		plan: planSchema.nullable(),
		instalments: z.array(instalmentSchema),
		/** The fixed prices together, before tax. */
		totalCents: z.int().min(0).pipe(centsSchema),
		clauses: z.array(z.strictObject({ key: z.string(), title: z.string(), text: z.string() })).min(1),
	})
	.refine(({ from, to }) => from <= to, 'ends before it begins')
	.refine(({ number, supersedes }) => (number === 1) === (supersedes === null), 'supersedes nothing, or is the first')
	.refine(({ seasons, totalCents }) => fixedCents(seasons) === totalCents, 'the prices do not sum to the total')
	.refine(
		({ instalments, totalCents }) => sum(instalments.map(({ cents }) => cents)) === totalCents,
		'the instalments do not sum to the total',
	)
export type AgreementDocument = z.infer<typeof documentSchema>

/** What an agreement's document is known by: a signature names it. */
export const documentHash = (document: AgreementDocument): Hash => hashOf(document)
