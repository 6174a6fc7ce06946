import type { Brand } from './brand'

/** An sRGB colour as CSS writes it: `#` and six lower-case hexadecimal digits. */
export type Hex = Brand<string, 'Hex'>

export const isHex = (text: string): text is Hex => /^#[0-9a-f]{6}$/.test(text)

/** @throws when `text` is not `#rrggbb` */
export function hex(text: string): Hex {
	const lower = text.toLowerCase()
	if (!isHex(lower)) throw new Error(`hex: "${text.slice(0, 20)}" is not a colour such as #5f7488`)
	return lower
}
