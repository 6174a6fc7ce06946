const short = (value: number): string => {
	const text = String(value)
	if (text.startsWith('0.')) return text.slice(1)
	return text.startsWith('-0.') ? `-${text.slice(2)}` : text
}

/** A measure in cm as SVG writes it: to a millimetre, without what can be left out. */
export const n = (value: number): string => short(Math.round(value * 10) / 10 + 0)

/** To a hundredth, for scales and opacities. */
export const n2 = (value: number): string => short(Math.round(value * 100) / 100 + 0)

export const clamp = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value))

export const mix = (from: number, to: number, share: number): number => from + (to - from) * share
