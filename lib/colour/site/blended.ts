import { convertLrgbToOklab, convertOklabToRgb, convertRgbToLrgb } from 'culori'
import type { Hex } from '../../units/hex'
import { hexOf, rgbOf } from '../rgb'

/** A colour of a front; its share of the photo where it is known. */
export type Blendable = { readonly hex: Hex; readonly share?: number | undefined }

const oklab = (of: Hex) => convertLrgbToOklab(convertRgbToLrgb(rgbOf(of)))

/** How much of the first goes in: by area where both areas are known, else half. */
const weightOf = (one: Blendable, other: Blendable): number => {
	if (one.share === undefined || other.share === undefined) return 0.5
	const whole = one.share + other.share
	return whole > 0 ? one.share / whole : 0.5
}

/** Two colours of a front as one: their mean in OKLab, weighted by area where both shares are known. */
export function blended(one: Blendable, other: Blendable): Hex {
	const [a, b, of] = [oklab(one.hex), oklab(other.hex), weightOf(one, other)]
	const mean = (x = 0, y = 0) => x * of + y * (1 - of)
	return hexOf(convertOklabToRgb({ l: mean(a.l, b.l), a: mean(a.a, b.a), b: mean(a.b, b.b) }))
}
