import { z } from 'zod'
import { holdingSchema, roleSchema } from '../recipe/material'
import { growsSchema } from '../recipe/recipe'
import type { Day } from '../units/day'
import { centsSchema, daySchema, hexSchema, idSchema } from '../units/schema'
import { isClean, normal } from '../units/text'

export const words = (max: number) =>
	z
		.string()
		.max(4 * max)
		.refine(isClean, 'holds characters that cannot be stored')
		.transform(normal)
		.pipe(z.string().max(max))
const dayOrNone = daySchema.nullable()
export const keySchema = z.string().regex(/^[a-z0-9]{1,12}$/, 'is not a key')
/** The most that a supplement or a season at a fixed price may come to: 100,000.00. */
export const mostCents = 10_000_000
const money = z.int().min(0).max(mostCents).pipe(centsSchema)
const decimal = (max: number) =>
	z
		.number()
		.min(0)
		.max(max)
		.refine((value) => Math.round(value * 1000) / 1000 === value, 'has more than three decimals')

/** How a count came about: typed by the designer, or grown from a recipe; one that is kept stays when the recipe grows anew. */
const countSchema = z.discriminatedUnion('way', [
	z.strictObject({ way: z.literal('typed'), value: decimal(9999) }),
	z.strictObject({ way: z.literal('grown'), value: decimal(9999), grows: growsSchema, isKept: z.boolean() }),
])

const draftLineSchema = z.strictObject({
	material: idSchema<'material'>(),
	role: roleSchema,
	holding: holdingSchema,
	count: countSchema,
})

const linesSchema = z.array(draftLineSchema).max(60)

const colourSchema = z.strictObject({
	name: words(40),
	hex: hexSchema,
	/** What on the client's front it takes up: "echoes your pans". */
	echoes: words(60),
})

const optionSchema = z.strictObject({
	key: keySchema,
	name: words(60),
	palette: z.array(colourSchema).max(8),
	pots: z.array(z.strictObject({ container: idSchema<'container'>(), lines: linesSchema })).max(60),
	/** What this option costs beyond a season that the agreement prices fixed. */
	supplementCents: money,
})

export const extraSchema = z.strictObject({
	key: keySchema,
	name: words(80),
	words: words(300),
	place: idSchema<'place'>(),
	minutes: decimal(600),
	lines: linesSchema,
})

/** A check that the designer has looked at and lets stand, with the note why. */
const overruledSchema = z.strictObject({
	option: keySchema,
	container: idSchema<'container'>(),
	check: z.string().max(80),
	note: words(200),
})

const agreementSchema = z.discriminatedUnion('is', [
	z.strictObject({ is: z.literal('none') }),
	z.strictObject({ is: z.literal('discount'), percent: decimal(100) }),
	z.strictObject({ is: z.literal('fixed'), cents: money, containers: z.array(idSchema<'container'>()).max(60) }),
])

/**
 * What the designer is working on, kept at every save; it may be far from ready (see `ready.ts`).
 * Money in cents, minutes in person-minutes, dates in the studio's time zone.
 */
export const draftSchema = z.strictObject({
	v: z.literal(1),
	title: words(120),
	letter: words(4000),
	window: z.strictObject({ from: dayOrNone, to: dayOrNone }),
	answerBy: dayOrNone,
	design: z.enum(['new', 'repeat']),
	takeDown: z.boolean(),
	containers: z
		.array(z.strictObject({ id: idSchema<'container'>(), mayLeaveOut: z.boolean(), isNew: z.boolean() }))
		.max(60),
	options: z.array(optionSchema).max(4),
	extras: z.array(extraSchema).max(20),
	agreement: agreementSchema,
	overruled: z.array(overruledSchema).max(200).default([]),
})

export type Draft = z.infer<typeof draftSchema>
export type DraftLine = z.infer<typeof draftLineSchema>
export type DraftOption = Draft['options'][number]
export type DraftExtra = Draft['extras'][number]

type Dates = { readonly from: Day | null; readonly to: Day | null; readonly answerBy: Day | null }

/** A draft as it begins, with the season's dates. */
export function emptyDraft({ from, to, answerBy }: Dates): Draft {
	return {
		v: 1,
		title: '',
		letter: '',
		window: { from, to },
		answerBy,
		design: 'new',
		takeDown: false,
		containers: [],
		options: [],
		extras: [],
		agreement: { is: 'none' },
		overruled: [],
	}
}
