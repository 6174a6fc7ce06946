import { z } from 'zod'
import * as card from '../../container/card'
import { faultsOfMeasured, type Measured, whole } from '../../container/measured/whole'
import type { LengthUnit } from '../../format/length'
import { emptyOr, hexField, idField, onceField, text, tick } from '../fields'
import { lengthField, measureField } from './length-field'
import { weightField } from './weight-field'

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
	light: z.enum(card.lights, 'Choose its light.'),
	isWindy: tick,
	isUnderEave: tick,
	hasRoadSalt: tick,
	outletNear: tick,
	hoseNear: tick,
	waterer: z.enum(card.waterers, 'Choose who waters it.'),
	stands: z.enum(card.stands, 'Choose how it stands.'),
	limitedWeight: z.enum(card.limits, 'Choose what limits its weight.'),
}

const mostVesselKg = 2000

/** Every box of the card, by its name. */
export const cardBoxes = (unit: LengthUnit) => ({
	name: text(80, { min: 1 }),
	shape: z.enum(card.shapes, 'Choose its shape.'),
	wall: z.enum(card.walls, 'Choose what it is made of.'),
	colour: hexField,
	owner: z.enum(['client', 'studio'], 'Choose whose it is.'),
	hasLiner: tick,
	hasDrainHole: tick,
	vesselKg: emptyOr(weightField(mostVesselKg, unit)),
	...measures(unit),
	...site,
	walkLeftCm: emptyOr(lengthField(0, 2000, unit)),
})

type Card = Measured & { readonly sillToGlassCm: number | null }

/**
 * The rules across the boxes of a card, and what is usual where nothing was measured. `beside` names the box at which
 * the fault of a measure is told that the form does not ask for.
 */
export const asWhole = <T extends Card>(boxes: z.ZodType<T>, beside: Readonly<Record<string, string>> = {}) =>
	boxes
		.superRefine((of, context) => {
			for (const { field, says } of faultsOfMeasured(of, of.sillToGlassCm))
				context.addIssue({ code: 'custom', message: says, path: [beside[field] ?? field] })
		})
		.transform((of) => whole(of))

/** The whole card of a container, with its rules across fields. */
export const containerForm = (unit: LengthUnit) =>
	asWhole(
		z.strictObject({
			once: onceField,
			client: idField<'client'>(),
			place: idField<'place'>(),
			container: emptyOr(idField<'container'>()),
			...cardBoxes(unit),
		}),
	)
