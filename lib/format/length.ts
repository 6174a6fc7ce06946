/** The inch of 1959: exactly 2.54 cm (NIST Handbook 44, Appendix C). */
export const cmPerInch = 2.54

export type LengthUnit = 'in' | 'cm'

const toOne = (value: number) => String(Math.round(value * 10) / 10)

/** A length as the studio measures it: "18 in", "46 cm". */
export function length(cm: number, unit: LengthUnit): string {
	return unit === 'in' ? `${toOne(cm / cmPerInch)} in` : `${toOne(cm)} cm`
}
