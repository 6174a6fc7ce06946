import { z } from 'zod'
import { words } from '../../proposal/draft'
import { daySchema, idSchema, momentSchema } from '../../units/schema'
import { hashSchema } from '../document/document'
import { strokeSchema } from './stroke'

const oneLine = (max: number) =>
	words(max).refine((text) => text.trim() !== '' && !text.includes('\n'), 'is not one line of words')
const person = idSchema<'person'>()

/** Of every signature: to which document of which agreement. */
const to = { v: z.literal(1), agreement: idSchema<'agreement'>(), document: hashSchema }

/** Given on a page, by a client's contact. */
const onScreen = z.strictObject({
	...to,
	is: z.literal('on a screen'),
	client: idSchema<'client'>(),
	person,
	typedName: oneLine(120),
	stroke: strokeSchema.nullable(),
	/** How it is known who signs: control of this mail address, shown by opening a link or typing a code. */
	proven: z.strictObject({ address: z.email().max(254), by: z.enum(['link', 'code']), at: momentSchema }),
	/** As what the document was opened before, each time. */
	opened: z
		.array(z.strictObject({ as: z.enum(['page', 'PDF']), at: momentSchema }))
		.min(1)
		.max(20),
	/** Which words on electronic records were agreed to, by a box of its own. */
	consent: z.strictObject({ version: z.int().min(1), hash: hashSchema, at: momentSchema }),
	/** The sentence that stood beside the name. */
	intent: oneLine(400),
	signedAt: momentSchema,
	/** From where, as the network and the browser say it; neither proves who it was. */
	sender: z.union([z.ipv4(), z.ipv6()]),
	browser: oneLine(100),
})

/** Given on paper and written down by the studio: `scan` is the SHA-256 of the picture of it. */
const onPaper = z.strictObject({
	...to,
	is: z.literal('on paper'),
	client: idSchema<'client'>(),
	signer: oneLine(120),
	signedOn: daySchema,
	scan: hashSchema,
	recordedBy: person,
	recordedAt: momentSchema,
})

/** The studio's own, given by issuing. */
const byStudio = z.strictObject({
	...to,
	is: z.literal('by the studio'),
	person,
	name: oneLine(120),
	signedAt: momentSchema,
})

/**
 * What is kept of a signature, and no more: enough to show who signed what, when and how. It names people, so a line of
 * the record holds its salted hash alone, and the text can be erased.
 */
export const signatureSchema = z
	.discriminatedUnion('is', [onScreen, onPaper, byStudio])
	.refine(
		(it) => it.is !== 'on a screen' || it.opened.some(({ at }) => at <= it.consent.at),
		'agrees to electronic records before one was opened',
	)
	.refine((it) => it.is !== 'on a screen' || it.consent.at <= it.signedAt, 'is signed before it was agreed to')
	.refine((it) => it.is !== 'on a screen' || it.proven.at <= it.signedAt, 'is signed before the address was proven')
export type Signature = z.infer<typeof signatureSchema>
