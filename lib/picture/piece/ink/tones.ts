import { clampChroma, converter, formatHex } from 'culori'
import { type Hex, hex } from '../../../units/hex'

export type Tones = {
	readonly pale: Hex
	readonly light: Hex
	readonly base: Hex
	readonly dark: Hex
	readonly deep: Hex
}

const toOklch = converter('oklch')

/** Light is warm and shade is cool: the hue goes a little way towards yellow, or towards blue. */
function towards(hue: number, goal: number, degrees: number): number {
	const gap = ((goal - hue + 540) % 360) - 180
	return hue + Math.sign(gap) * Math.min(Math.abs(gap), degrees)
}

/** The washes of one colour, in OKLCH, as lamp and shade change it. */
export function tones(of: Hex): Tones {
	const { l = 0.5, c = 0, h = 0 } = toOklch(of) ?? {}
	const room = Math.max(0, 0.99 - l)
	const tone = (lightness: number, chroma: number, hue: number): Hex =>
		hex(formatHex(clampChroma({ mode: 'oklch', l: Math.max(0.06, lightness), c: c * chroma, h: hue }, 'oklch')))
	return {
		pale: tone(l + room * (0.5 + 0.5 * l ** 4), 0.7, towards(h, 100, 8)),
		light: tone(l + room * (0.24 + 0.28 * l ** 4), 0.98, towards(h, 100, 6)),
		base: of,
		dark: tone(l - 0.045 - 0.09 * l, 0.96, towards(h, 265, 6)),
		deep: tone(l - 0.09 - 0.18 * l, 0.9, towards(h, 265, 10)),
	}
}

/** White birch and its like: pale, and hardly a colour. */
export function isPaleBark(of: Hex): boolean {
	const { l = 0, c = 0 } = toOklch(of) ?? {}
	return l > 0.78 && c < 0.06
}

/** Leaf and stalk where a look names one colour only. */
export const leafGreen = hex('#567a4a')
export const barkBrown = hex('#6b5241')

/** Green enough to be a leaf. */
export function isGreen(of: Hex): boolean {
	const { c = 0, h = 0 } = toOklch(of) ?? {}
	return c > 0.025 && h > 95 && h < 185
}

/** The eye of a daisy is golden; where its petals are golden themselves, brown. */
export function eyeOf(petal: Hex): Hex {
	const { c = 0, h = 0 } = toOklch(petal) ?? {}
	return hex(c > 0.09 && h > 45 && h < 115 ? '#5a3a26' : '#d9a52f')
}
