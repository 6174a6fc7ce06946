import { convertLrgbToRgb } from 'culori'
import { fullLight, type Light, lightOf } from './light'
import { checkPhoto, layoutOf, type PhotoSize, type Pixels, type Spot } from './photo'

export type Correction =
	| { readonly ok: true; readonly pixels: Uint8Array }
	| { readonly ok: false; readonly says: string }

const no = (says: string): Correction => ({ ok: false, says })

/** Half the side of the square that is read round a tap, as a part of the longer side: a finger is not a pixel. */
const reach = 0.01

/** Mean light round a tap, and whether any channel of it ran full somewhere. */
function tapped(pixels: Pixels, { width, height, channels }: PhotoSize, { x, y }: Spot): Light & { isBurnt: boolean } {
	const by = Math.round(Math.max(width, height) * reach)
	const middle = (of: number, length: number) => Math.min(length - 1, Math.max(0, Math.floor(of * length)))
	const [column, row] = [middle(x, width), middle(y, height)]
	const at = layoutOf(channels)
	const sum = { red: 0, green: 0, blue: 0, count: 0, burnt: 0 }
	for (let down = Math.max(0, row - by); down <= Math.min(height - 1, row + by); down++)
		for (let across = Math.max(0, column - by); across <= Math.min(width - 1, column + by); across++) {
			const start = (down * width + across) * channels
			const [r = 0, g = 0, b = 0] = [at.red, at.green, at.blue].map((channel) => pixels[start + channel] ?? 0)
			sum.red += lightOf[r] ?? 0
			sum.green += lightOf[g] ?? 0
			sum.blue += lightOf[b] ?? 0
			sum.count += 1
			sum.burnt += Number(Math.max(r, g, b) === 255)
		}
	const { red, green, blue, count, burnt } = sum
	return { red: red / count, green: green / count, blue: blue / count, isBurnt: burnt * 2 > count }
}

/** What each level becomes when its light is multiplied. */
const levels = (gain: number): Uint8Array =>
	Uint8Array.from(lightOf, (light) => {
		const at = Math.min(1, (light * gain) / fullLight)
		return Math.round(convertLrgbToRgb({ r: at, g: at, b: at }).r * 255)
	})

function scaled(pixels: Pixels, channels: PhotoSize['channels'], gains: readonly [number, number, number]): Uint8Array {
	const at = layoutOf(channels)
	const to = Uint8Array.from(pixels)
	for (const [index, channel] of [at.red, at.green, at.blue].entries()) {
		const level = levels(gains[index] ?? 1)
		for (let place = channel; place < to.length; place += channels) to[place] = level[to[place] ?? 0] ?? 0
	}
	return to
}

/** Beyond this, what was tapped is a coloured thing, not a white one in coloured light. */
const mostGain = 2.5
const leastLight = 0.03

/**
 * The photo as it would be if what lies at `whiteAt` were without colour: each channel's linear light is multiplied
 * (after von Kries; in the sRGB primaries, not in those of the eye, so strong casts leave a rest in saturated colours). Lightness
 * at the tap stays. One light is corrected, not two: where the sun and a lamp mix, half the picture stays off.
 * Refused where the tap is too dark, burnt out or plainly coloured, and in a photo without colours.
 * @throws when there are not as many pixels as `size` says
 */
export function corrected(pixels: Pixels, size: PhotoSize, whiteAt: Spot): Correction {
	checkPhoto(pixels, size)
	if (size.channels < 3) return no('This photo has no colours: there is no cast to correct.')
	const { red, green, blue, isBurnt } = tapped(pixels, size, whiteAt)
	if (isBurnt) return no('This spot is burnt out: its true colour is lost. Tap something white that is less bright.')
	const light = 0.2126 * red + 0.7152 * green + 0.0722 * blue
	const [least, greatest] = [Math.min(red, green, blue), Math.max(red, green, blue)]
	if (light < leastLight * fullLight)
		return no('This spot is too dark to tell its cast. Tap something white in the light.')
	if (greatest > mostGain * least)
		return no('This looks like a colour, not like white in coloured light. Tap something white.')
	return { ok: true, pixels: scaled(pixels, size.channels, [light / red, light / green, light / blue]) }
}
