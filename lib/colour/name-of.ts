import { converter } from 'culori'
import type { Hex } from '../units/hex'
import { type Family, type Named, namedRanges } from './names'
import { rgbOf } from './rgb'

const toOklch = converter('oklch')

export type Oklch = { readonly l: number; readonly c: number; readonly h: number }

/** OKLCh (B. Ottosson 2020): lightness 0 to 1, chroma, hue in degrees; a grey has hue 0. */
export function oklchOf(of: Hex): Oklch {
	const { l, c, h = 0 } = toOklch(rgbOf(of))
	return { l, c, h }
}

const holds = ({ l, c, h }: Named, of: Oklch): boolean => {
	const inHue = h[0] < h[1] ? of.h >= h[0] && of.h < h[1] : of.h >= h[0] || of.h < h[1]
	return of.l >= l[0] && of.l < l[1] && of.c >= c[0] && of.c < c[1] && inHue
}

function rangeOf(of: Oklch): Named {
	const found = namedRanges.find((each) => holds(each, of))
	if (found === undefined) throw new Error(`nameOf: no range holds ${JSON.stringify(of)}`)
	return found
}

function warmth({ c, h }: Oklch): string {
	if (c < 0.006) return ''
	if (h >= 25 && h < 130) return 'warm '
	return h >= 180 && h < 300 ? 'cool ' : ''
}

function tone({ l, c }: Oklch): string {
	if (l >= 0.45 && c > 0.21) return 'bright '
	if (l < 0.47) return 'deep '
	if (l > 0.82) return c < 0.13 ? 'pale ' : 'light '
	return c < 0.055 ? 'soft ' : ''
}

function prefixed({ name, prefix }: Named, of: Oklch): string {
	switch (prefix) {
		case 'none':
			return name
		case 'warmth':
			return name.replace(/(\S+)$/, `${warmth(of)}$1`)
		case 'tone':
			return `${tone(of)}${name}`
		default: {
			const never: never = prefix
			throw new Error(`nameOf: ${never}`)
		}
	}
}

/** A colour in plain words: "deep green", "dark warm grey", "brass". */
export function nameOf(of: Hex): string {
	const oklch = oklchOf(of)
	return prefixed(rangeOf(oklch), oklch)
}

/** The bare word: "green", "grey", "brass". */
export const nounOf = (of: Hex): string => rangeOf(oklchOf(of)).name.split(' ').at(-1) ?? ''

export const familyOf = (of: Hex): Family => rangeOf(oklchOf(of)).family
