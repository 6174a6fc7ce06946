import type { LengthUnit } from './length'

/** Avoirdupois pound: 0.45359237 kg, exactly (NIST Handbook 44, Appendix C). */
export const kgPerPound = 0.45359237

/** A weight as a studio reads it that measures in inches or in cm: "212 lb", "96 kg"; to the tenth below ten. */
export function weight(kg: number, unit: LengthUnit): string {
	const value = unit === 'in' ? kg / kgPerPound : kg
	const rounded = value < 10 ? Math.round(value * 10) / 10 : Math.round(value)
	return `${rounded} ${unit === 'in' ? 'lb' : 'kg'}`
}
