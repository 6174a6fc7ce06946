import { z } from 'zod'
import { shapes, stands, walls } from '../../container/card'
import { wallKinds } from '../../container/site'
import { forms } from '../../recipe/look'
import { hazards, holdings, roles, units } from '../../recipe/material'
import { quarters } from '../../season/season'
import { daySchema as day, hexSchema as hex, idSchema } from '../../units/schema'
import { offeredPrices } from './offered-prices'

const place = idSchema<'place'>()
const container = idSchema<'container'>()
/** What is drawn of a line; revisions from before there were pictures have none. */
const look = z.strictObject({
	form: z.enum(forms),
	secondHex: hex.nullable(),
	lengthCm: z.number().nullable(),
	acrossCm: z.number().nullable(),
	/** Single pieces: tips in so many kg. */
	pieces: z.number(),
})
const vessel = z.strictObject({
	shape: z.enum(shapes),
	topCm: z.number(),
	topDepthCm: z.number().nullable(),
	bottomCm: z.number(),
	bottomDepthCm: z.number().nullable(),
	heightCm: z.number(),
	wallCm: z.number(),
	headspaceCm: z.number(),
	soilDepthCm: z.number().nullable(),
	madeOf: z.enum(walls),
	colour: hex,
	stands: z.enum(stands),
	sillToGlassCm: z.number().nullable(),
})
const lines = z.array(
	z.strictObject({
		role: z.enum(roles),
		name: z.string(),
		hex,
		unit: z.enum(units),
		count: z.number(),
		holding: z.enum(holdings),
		hazards: z.array(z.enum(hazards)),
		look: look.exactOptional(),
	}),
)

/** Those of one pot or extra; the first offers kept all cautions together. */
const cautions = z.array(z.string()).exactOptional()

/**
 * What a client is shown and answers: frozen at publishing, strict, so that nothing of the studio's can ride along.
 * Every total is computed from `prices` alone.
 */
export const offerSchema = z.strictObject({
	v: z.literal(1),
	proposal: idSchema<'proposal'>(),
	number: z.int().min(1),
	studio: z.string(),
	signedBy: z.string(),
	client: z.string(),
	season: z.strictObject({ quarter: z.enum(quarters), year: z.int() }),
	title: z.string(),
	letter: z.string(),
	window: z.strictObject({ from: day, to: day }),
	answerBy: day,
	places: z.array(
		z.strictObject({
			id: place,
			name: z.string(),
			address: z.string(),
			wall: z.strictObject({ kind: z.enum(wallKinds), hex }),
			door: hex.nullable(),
		}),
	),
	containers: z.array(
		z.strictObject({
			id: container,
			place,
			name: z.string(),
			words: z.string(),
			mayLeaveOut: z.boolean(),
			vessel: vessel.exactOptional(),
		}),
	),
	options: z.array(
		z.strictObject({
			key: z.string(),
			name: z.string(),
			palette: z.array(z.strictObject({ name: z.string(), hex, echoes: z.string() })),
			pots: z.array(z.strictObject({ container, lines, cautions })),
			prices: offeredPrices,
		}),
	),
	extras: z.array(z.strictObject({ key: z.string(), name: z.string(), words: z.string(), place, lines, cautions })),
	cautions: z.array(z.string()),
})

export type Offer = z.infer<typeof offerSchema>
export type OfferOption = Offer['options'][number]
export type OfferLine = OfferOption['pots'][number]['lines'][number]
