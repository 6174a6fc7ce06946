/** The inch of 1959: exactly 2.54 cm (NIST Handbook 44, Appendix C). */
export const cmPerInch = 2.54

export type LengthUnit = 'in' | 'cm'

const factor = (unit: LengthUnit) => (unit === 'in' ? cmPerInch : 1)
const toOne = (value: number) => String(Math.round(value * 10) / 10)
const to = (decimals: number, value: number) => Math.round(value * 10 ** decimals) / 10 ** decimals

/** A length as the studio measures it: "18 in", "46 cm". */
export function length(cm: number, unit: LengthUnit): string {
	return `${toOne(cm / factor(unit))} ${unit}`
}

/** What was measured in the studio's unit, in cm: exactly, as far as four decimals of an inch go (a sixteenth is 0.0625). */
export const toCm = (measured: number, unit: LengthUnit): number => to(5, measured * factor(unit))

/** cm in the studio's unit, to four decimals; gives back exactly what `toCm` was given. */
export const fromCm = (cm: number, unit: LengthUnit): number => to(4, cm / factor(unit))
