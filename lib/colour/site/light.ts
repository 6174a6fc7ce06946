import { convertLrgbToOklab, convertLrgbToRgb, convertRgbToLrgb } from 'culori'
import type { Hex } from '../../units/hex'
import { hexOf } from '../rgb'

/**
 * Light is added up as whole numbers of this part of full light: sums of whole numbers are exact, so that it does not
 * matter in which order pixels come.
 */
export const fullLight = 2 ** 20

/** Linear light of an 8-bit channel, in parts of `fullLight`. */
export const lightOf: Float64Array = Float64Array.from({ length: 256 }, (_, level) => {
	const at = level / 255
	return Math.round(convertRgbToLrgb({ r: at, g: at, b: at }).r * fullLight)
})

/** Mean linear light of an area, each channel from 0 to `fullLight`. */
export type Light = { readonly red: number; readonly green: number; readonly blue: number }

const linear = ({ red, green, blue }: Light) => ({ r: red / fullLight, g: green / fullLight, b: blue / fullLight })

export type Oklab = { readonly l: number; readonly a: number; readonly b: number }

export const apart = (a: Oklab, b: Oklab): number => Math.sqrt((a.l - b.l) ** 2 + (a.a - b.a) ** 2 + (a.b - b.b) ** 2)

export const oklabOf = (of: Light): Oklab => convertLrgbToOklab(linear(of))

export const hexOfLight = (of: Light): Hex => hexOf(convertLrgbToRgb(linear(of)))
