import { clampChroma, converter, formatHex, wcagContrast } from 'culori'
import { type Hex, hex } from '../units/hex'

const toOklch = converter('oklch')

/** Grounds of the site, light and dusk, as `app/ui/styles/tokens.css` has them. */
export const grounds = { light: 'oklch(0.985 0.006 158)', dusk: 'oklch(0.2 0.014 165)' } as const
type Theme = keyof typeof grounds

const atLightness = (of: Hex, l: number, most: number): Hex => {
	const { c = 0, h = 0 } = toOklch(of) ?? {}
	return hex(formatHex(clampChroma({ mode: 'oklch', l, c: Math.min(c, most), h }, 'oklch')))
}

/** 4.5 to 1 (WCAG 2.2, 1.4.3), and what a screen that rounds the ground to 8 bits may take of it. */
const least = 4.52

/** The nearest lightness at which the colour reads as a mark or a line on the ground. */
export function markOn(theme: Theme, of: Hex): Hex {
	const { l = 0.5 } = toOklch(of) ?? {}
	const step = theme === 'light' ? -0.02 : 0.02
	for (let lightness = l; theme === 'light' ? lightness > 0 : lightness < 1; lightness += step) {
		const mark = atLightness(of, lightness, 0.2)
		if (wcagContrast(mark, grounds[theme]) >= least) return mark
	}
	return hex(theme === 'light' ? '#000000' : '#ffffff')
}

/** A wash of the colour, hardly more than limewash, on which ink still passes. */
export const washOn = (theme: Theme, of: Hex): Hex => atLightness(of, theme === 'light' ? 0.95 : 0.27, 0.018)

/** The colours that a client's page takes from their wall and from the palette on it. */
export type Tint = Record<Theme, { readonly mark: Hex; readonly wash: Hex }>

export function tint(wall: Hex, accent: Hex): Tint {
	const of = (theme: Theme) => ({ mark: markOn(theme, accent), wash: washOn(theme, wall) })
	return { light: of('light'), dusk: of('dusk') }
}
