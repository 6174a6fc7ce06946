import { type Hex, hex } from '../units/hex'

/** Red, green and blue from 0 to 1, encoded as sRGB is (IEC 61966-2-1). */
export type Rgb = { readonly mode: 'rgb'; readonly r: number; readonly g: number; readonly b: number }

export function rgbOf(of: Hex): Rgb {
	const value = Number.parseInt(of.slice(1), 16)
	return { mode: 'rgb', r: (value >> 16) / 255, g: ((value >> 8) & 255) / 255, b: (value & 255) / 255 }
}

const byte = (of: number): number => Math.round(Math.min(1, Math.max(0, of)) * 255)

/** The nearest of the 16.7 million; what lies outside sRGB is cut off channel by channel. */
export const hexOf = ({ r, g, b }: Omit<Rgb, 'mode'>): Hex =>
	hex(`#${((byte(r) << 16) | (byte(g) << 8) | byte(b)).toString(16).padStart(6, '0')}`)
