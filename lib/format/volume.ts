import type { LengthUnit } from './length'

/** US liquid gallon: 231 cubic inches, exactly (NIST Handbook 44, Appendix C). */
export const litresPerGallon = 3.785411784
/** US dry quart: a 32nd of the bushel of 2150.42 cubic inches, exactly (same source). Potting mix is sold by it. */
export const litresPerDryQuart = 1.101220942715

const toOne = (value: number) => Math.round(value * 10) / 10
const perGallon = 4

/** A volume as a studio reads it that measures in inches or in cm: "12.7 gal", under a gallon "3.1 liquid qt"; "48 L". */
export function volume(litres: number, unit: LengthUnit): string {
	if (unit === 'cm') return `${toOne(litres)} L`
	const gallons = litres / litresPerGallon
	return gallons < 1 ? `${toOne(gallons * perGallon)} liquid qt` : `${toOne(gallons)} gal`
}

/** Potting mix as its bags are marked: "43.6 dry qt", "48 L". */
export const mixVolume = (litres: number, unit: LengthUnit): string =>
	unit === 'cm' ? volume(litres, unit) : `${toOne(litres / litresPerDryQuart)} dry qt`
