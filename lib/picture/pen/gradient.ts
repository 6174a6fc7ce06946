import type { Hex } from '../../units/hex'
import type { Defs } from './defs'
import { n2 } from './n'

/** Where it begins along the way (0 to 1), its colour, and how much it covers. */
export type Stop = readonly [at: number, colour: Hex | 'white' | 'black', opacity?: number]

const stopsOf = (stops: readonly Stop[]): string =>
	stops
		.map(([at, colour, opacity = 1]) => {
			const cover = opacity === 1 ? '' : ` stop-opacity="${n2(opacity)}"`
			return `<stop offset="${n2(at)}" stop-color="${colour}"${cover}/>`
		})
		.join('')

const ways = { across: '', down: ' x2="0" y2="1"', slanting: ' y2="1"' } as const

/** As a value of `fill`. */
export function linear(defs: Defs, way: keyof typeof ways, stops: readonly Stop[]): string {
	return `url(#${defs.add((id) => `<linearGradient id="${id}"${ways[way]}>${stopsOf(stops)}</linearGradient>`)})`
}

/** From the middle of what is filled, or from (`x`, `y`) in shares of it, outwards. */
export function radial(defs: Defs, stops: readonly Stop[], [x, y]: readonly [number, number] = [0.5, 0.5]): string {
	const middle = x === 0.5 && y === 0.5 ? '' : ` cx="${n2(x)}" cy="${n2(y)}"`
	return `url(#${defs.add((id) => `<radialGradient id="${id}"${middle}>${stopsOf(stops)}</radialGradient>`)})`
}
