import { cmPerInch, type LengthUnit } from './length'

/** A length in a box of a form, to three decimals: an eighth of an inch is 0.125. */
export const typedLength = (cm: number, unit: LengthUnit): string =>
	String(Math.round((unit === 'in' ? cm / cmPerInch : cm) * 1000) / 1000)

/**
 * What to keep, in cm, when `typed` comes back from a form that showed `kept`. Three decimals of an inch cannot hold
 * every millimetre: what shows alike was not changed.
 */
export function unlessChanged<T extends number | null>(typed: T, kept: T, unit: LengthUnit): T {
	if (typed === null || kept === null) return typed
	return typedLength(typed, unit) === typedLength(kept, unit) ? kept : typed
}
