import { z } from 'zod'
import type { LengthUnit } from '../../format/length'
import { forms } from '../../recipe/look'
import { lightNeeds } from '../../recipe/traits'
import { decimalField, emptyOr, hexField, text } from '../fields'
import { lengthField } from '../places/length-field'
import { weightField } from '../places/weight-field'
import { zoneField } from '../places/zone-field'

const monthField = z
	.string()
	.regex(/^(1[0-2]|[1-9])$/, 'Choose a month.')
	.transform(Number)
const wholeField = (max: number) => decimalField(1, max).refine(Number.isInteger, 'Give a whole number.')

/** How a piece of a material looks, and what it needs and does outside; lengths and weights in the studio's units. */
export const traitFields = (unit: LengthUnit) => ({
	form: z.enum(forms, 'Choose what it looks like.'),
	secondHex: emptyOr(hexField),
	lengthCm: emptyOr(lengthField(1, 1000, unit)),
	acrossCm: emptyOr(lengthField(1, 1000, unit)),
	hadFrom: monthField,
	hadTo: monthField,
	lastsFrom: monthField,
	lastsTo: monthField,
	zone: zoneField,
	needs: z.enum(lightNeeds, 'Choose the light that it needs.'),
	spacingCm: emptyOr(lengthField(1, 500, unit)),
	rootBallLitres: emptyOr(decimalField(0.01, 500)),
	kgEach: emptyOr(weightField(500, unit)),
	watts: emptyOr(decimalField(0, 5000)),
	mostEndToEnd: emptyOr(wholeField(200)),
	regulated: text(200),
})
