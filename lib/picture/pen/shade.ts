import { clampChroma, converter, formatHex, type Oklch } from 'culori'
import { type Hex, hex } from '../../units/hex'
import { remembered } from './remembered'

const toOklch = converter('oklch')

export type Lch = { readonly l: number; readonly c: number; readonly h: number }

export function lchOf(colour: Hex): Lch {
	const { l = 0, c = 0, h = 0 } = toOklch(colour) ?? {}
	return { l, c, h }
}

/** The nearest colour that a screen can show, keeping lightness and hue. */
export function hexOf({ l, c, h }: Lch): Hex {
	const wanted: Oklch = { mode: 'oklch', l: Math.min(1, Math.max(0, l)), c: Math.max(0, c), h }
	return hex(formatHex(clampChroma(wanted, 'oklch')))
}

type Asked = { readonly colour: Hex; readonly by: number; readonly chroma: number }

const shaded = remembered(
	({ colour, by, chroma }: Asked) => {
		const { l, c, h } = lchOf(colour)
		return hexOf({ l: l + by, c: c * chroma, h })
	},
	({ colour, by, chroma }) => `${colour} ${by} ${chroma}`,
	4000,
)

/** `by` in OKLCH lightness (0 to 1), chroma multiplied by `chroma`. */
export const shade = (colour: Hex, by: number, chroma = 1): Hex => shaded({ colour, by, chroma })
