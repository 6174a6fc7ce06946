import { cmPerInch, type LengthUnit } from '../format/length'
import { decimalField } from './fields'

/** Hundredths of a millimetre, so that inches that fill a pot to its rim are not a float's breath short of it. */
export const toHundredths = (cm: number) => Math.round(cm * 1000)

/** A length as it was typed, in the studio's units; in cm to the hundredth of a millimetre. */
export function lengthField(min: number, max: number, unit: LengthUnit) {
	const factor = unit === 'in' ? cmPerInch : 1
	return decimalField(0, 10_000)
		.transform((value) => toHundredths(value * factor) / 1000)
		.refine(
			(cm) => cm >= min && cm <= max,
			`Give a measure from ${Math.ceil(min / factor)} to ${Math.floor(max / factor)} ${unit}.`,
		)
}
