import type { LengthUnit } from './length'
import { kgPerPound } from './weight'

const to = (decimals: number, value: number) => Math.round(value * 10 ** decimals) / 10 ** decimals
/** Of the avoirdupois pound (NIST Handbook 44, Appendix C). */
const ouncesPerPound = 16
const inKg: Readonly<Record<string, number>> = {
	...Object.fromEntries(['lb', 'lb.', 'lbs', 'lbs.', 'pound', 'pounds'].map((each) => [each, kgPerPound])),
	...Object.fromEntries(['oz', 'oz.', 'ounce', 'ounces'].map((each) => [each, kgPerPound / ouncesPerPound])),
	...Object.fromEntries(['kg', 'kg.', 'kilo', 'kilos'].map((each) => [each, 1])),
	...Object.fromEntries(['g', 'g.', 'gram', 'grams'].map((each) => [each, 0.001])),
}
const unitOf = (unit: LengthUnit) => (unit === 'in' ? 'lb' : 'kg')

const shape = /^(\d{1,5}(?:\.\d{1,3})?|\.\d{1,3})\s*([a-z]*\.?)$/i

/**
 * A weight as people write it, in kg: "26", "26.5", with a unit of its own ("12 kg") or in the pounds of a studio that
 * measures in inches. Three decimals of a pound are kept exactly; null where it is no weight.
 */
export function readWeight(typed: string, unit: LengthUnit): number | null {
	const [, value, own] = shape.exec(typed.trim()) ?? []
	const factor = inKg[own === '' || own === undefined ? unitOf(unit) : own.toLowerCase()]
	return value === undefined || factor === undefined ? null : to(11, Number(value) * factor)
}

/** A weight in a box of a form, in the studio's unit, to three decimals. */
export const typedWeight = (kg: number, unit: LengthUnit): string => String(to(3, unit === 'in' ? kg / kgPerPound : kg))

/** What to keep, in kg, when `typed` comes back from a form that showed `kept`: what shows alike was not changed. */
export function weightUnlessChanged(typed: number | null, kept: number | null, unit: LengthUnit): number | null {
	if (typed === null || kept === null) return typed
	return typedWeight(typed, unit) === typedWeight(kept, unit) ? kept : typed
}
