import { cmPerInch, fromCm, type LengthUnit } from './length'

const toThree = (value: number) => Math.round(value * 1000) / 1000

/** Cards were once kept to the hundredth of a millimetre: three decimals that come to just that are what was typed. */
function asKeptBefore(cm: number, unit: LengthUnit): number | null {
	const factor = unit === 'in' ? cmPerInch : 1
	const short = toThree(cm / factor)
	return toThree(short * factor) === cm ? short : null
}

/** A length in a box of a form, to four decimals: a sixteenth of an inch is 0.0625. */
export const typedLength = (cm: number, unit: LengthUnit): string => String(asKeptBefore(cm, unit) ?? fromCm(cm, unit))

/**
 * What to keep, in cm, when `typed` comes back from a form that showed `kept`. Four decimals of an inch cannot hold
 * every millimetre: what shows alike was not changed.
 */
export function unlessChanged<T extends number | null>(typed: T, kept: T, unit: LengthUnit): T {
	if (typed === null || kept === null) return typed
	return typedLength(typed, unit) === typedLength(kept, unit) ? kept : typed
}
