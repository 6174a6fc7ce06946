import { z } from 'zod'
import * as card from '../container/card'
import { faultsOfMeasured, whole } from '../container/measured/whole'
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
import { lengthField, measureField } from './length-field'
import { weightField } from './weight-field'
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

export const changeAddressForm = z.strictObject({
	once: onceField,
	client: idField<'client'>(),
	contact: idField<'contact'>(),
	address: addressField,
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

/** Outer measures, and what is inside them; `faultsOf` says within which bounds. */
function measures(unit: LengthUnit) {
	const [measure, orNone] = [measureField(unit), emptyOr(measureField(unit))]
	return {
		topCm: measure,
		topDepthCm: orNone,
		bottomCm: measure,
		bottomDepthCm: orNone,
		heightCm: measure,
		wallCm: orNone,
		headspaceCm: orNone,
		soilDepthCm: orNone,
		sillToGlassCm: orNone,
	}
}

/** Where it stands, and what is around it. */
const site = {
	light: z.enum(card.lights),
	isWindy: tick,
	isUnderEave: tick,
	hasRoadSalt: tick,
	outletNear: tick,
	hoseNear: tick,
	waterer: z.enum(card.waterers),
	stands: z.enum(card.stands),
	limitedWeight: z.enum(card.limits),
}

const mostVesselKg = 2000

const cardFields = (unit: LengthUnit) =>
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
		vesselKg: emptyOr(weightField(mostVesselKg, unit)),
		...measures(unit),
		...site,
		walkLeftCm: emptyOr(lengthField(0, 2000, unit)),
	})

/** The whole card of a container, with its rules across fields. */
export const containerForm = (unit: LengthUnit) =>
	cardFields(unit)
		.superRefine((of, context) => {
			for (const { field, says } of faultsOfMeasured(of, of.sillToGlassCm))
				context.addIssue({ code: 'custom', message: says, path: [field] })
		})
		.transform(whole)
