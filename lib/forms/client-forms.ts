import { z } from 'zod'
import * as card from '../container/card'
import { wallKinds } from '../container/site'
import type { LengthUnit } from '../format/length'
import {
	addressField,
	amountField,
	dayField,
	decimalField,
	emptyOr,
	hexField,
	idField,
	onceField,
	text,
	tick,
} from './fields'
import { lengthField, toHundredths } from './length-field'
import { zoneField } from './zone-field'

const newOr = <Of extends string>() => emptyOr(idField<Of>())

export const clientForm = z
	.strictObject({
		once: onceField,
		client: newOr<'client'>(),
		kind: z.enum(['business', 'household'], 'Choose business or household.'),
		name: text(120, { min: 1 }),
		netDays: z.enum(['15', '30']).transform((value) => (value === '15' ? 15 : 30)),
		exemptCertificate: text(60).transform((value) => (value === '' ? null : value)),
		exemptExpires: emptyOr(dayField),
		studioNote: text(2000, { lines: true }),
	})
	.refine(({ exemptCertificate, exemptExpires }) => (exemptCertificate === null) === (exemptExpires === null), {
		message: 'A certificate has a number and a day on which it expires.',
		path: ['exemptExpires'],
	})

export const contactForm = z.strictObject({
	once: onceField,
	client: idField<'client'>(),
	name: text(120, { min: 1 }),
	address: addressField,
	may: z.enum(['approve', 'look'], 'Choose what they may do.'),
})

export const endContactForm = z.strictObject({
	once: onceField,
	client: idField<'client'>(),
	contact: idField<'contact'>(),
})

const percentField = decimalField(0, 30).transform((value) => Math.round(value * 1000))

export const placeForm = z.strictObject({
	once: onceField,
	client: idField<'client'>(),
	place: newOr<'place'>(),
	name: text(80, { min: 1 }),
	address: text(300, { min: 1, lines: true }),
	taxPercent: percentField,
	driveMinutes: decimalField(0, 600),
	zone: emptyOr(amountField),
	wallKind: z.enum(wallKinds, 'Choose how the wall is made.'),
	wallHex: hexField,
	doorHex: emptyOr(hexField),
	hardinessZone: zoneField,
	accessNote: text(1000, { lines: true }),
})

export const colourForm = z.strictObject({
	once: onceField,
	client: idField<'client'>(),
	place: idField<'place'>(),
	name: text(40, { min: 1 }),
	hex: hexField,
	side: z.enum(['inside', 'outside']),
})

type Length = (min: number, max: number) => ReturnType<typeof lengthField>

/** Outer measures, and what is inside them. */
const measures = (length: Length) => ({
	topCm: length(5, 1000),
	topDepthCm: emptyOr(length(5, 1000)),
	bottomCm: length(3, 1000),
	bottomDepthCm: emptyOr(length(3, 1000)),
	heightCm: length(5, 500),
	wallCm: emptyOr(length(0, 20)),
	headspaceCm: emptyOr(length(0, 50)),
	soilDepthCm: emptyOr(length(1, 500)),
	vesselKg: emptyOr(decimalField(0, 2000)),
})

/** Where it stands, and what is around it. */
const site = (length: Length) => ({
	light: z.enum(card.lights),
	isWindy: tick,
	isUnderEave: tick,
	hasRoadSalt: tick,
	sillToGlassCm: emptyOr(length(0, 300)),
	outletNear: tick,
	hoseNear: tick,
	waterer: z.enum(card.waterers),
	stands: z.enum(card.stands),
	limitedWeight: z.enum(card.limits),
	walkLeftCm: emptyOr(length(0, 2000)),
})

const cardFields = (length: Length) =>
	z.strictObject({
		once: onceField,
		client: idField<'client'>(),
		place: idField<'place'>(),
		container: newOr<'container'>(),
		name: text(80, { min: 1 }),
		shape: z.enum(card.shapes),
		wall: z.enum(card.walls),
		colour: hexField,
		owner: z.enum(['client', 'studio']),
		hasLiner: tick,
		hasDrainHole: tick,
		...measures(length),
		...site(length),
	})

/** The whole card of a container, with its rules across fields. */
export function containerForm(unit: LengthUnit) {
	return cardFields((min, max) => lengthField(min, max, unit))
		.transform((typed) => ({
			...typed,
			wallCm: typed.wallCm ?? card.usualWallCm[typed.wall],
			headspaceCm: typed.headspaceCm ?? card.usualHeadspaceCm,
			topDepthCm: card.isRound(typed.shape) ? null : (typed.topDepthCm ?? typed.topCm),
			bottomDepthCm: card.isRound(typed.shape) ? null : (typed.bottomDepthCm ?? typed.bottomCm),
		}))
		.refine(
			({ wallCm, topCm, topDepthCm, bottomCm, bottomDepthCm }) =>
				wallCm * 2 < Math.min(topCm, topDepthCm ?? topCm, bottomCm, bottomDepthCm ?? bottomCm),
			{ message: 'The walls would be thicker than the pot.', path: ['wallCm'] },
		)
		.refine(({ wallCm, headspaceCm, heightCm }) => toHundredths(wallCm + headspaceCm) < toHundredths(heightCm), {
			message: 'No soil would fit: look at height, wall and headspace.',
			path: ['heightCm'],
		})
}
