import { z } from 'zod'
import { cmPerInch, type LengthUnit } from '../../format/length'
import { howToMeasure, readLength } from '../../format/read-length'

/** A length as it was typed, in cm; in the studio's units where it names none. */
export const measureField = (unit: LengthUnit) =>
	z.string().transform((typed, context): number => {
		const cm = readLength(typed, unit)
		if (cm !== null) return cm
		context.addIssue({ code: 'custom', message: howToMeasure(unit) })
		return z.NEVER
	})

/** The same between two bounds in cm, which are told in the studio's units. */
export function lengthField(min: number, max: number, unit: LengthUnit) {
	const factor = unit === 'in' ? cmPerInch : 1
	return measureField(unit).refine(
		(cm) => cm >= min && cm <= max,
		`Give a measure from ${Math.ceil(min / factor)} to ${Math.floor(max / factor)} ${unit}.`,
	)
}
